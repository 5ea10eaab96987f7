// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A program on a pseudo-terminal of 80 columns, typed at as a person does.
#pragma once

#include <sys/types.h>

#include <string>
#include <vector>

class Terminal {
  public:
    explicit Terminal(const std::vector<std::string>& words);
    ~Terminal();
    Terminal(const Terminal&) = delete;
    Terminal& operator=(const Terminal&) = delete;

    // Everything printed up to the next prompt (`83> `), without control sequences. Throws
    // std::runtime_error when none comes in twenty seconds, or the program ends.
    std::string until_prompt();
    // The number in the last prompt.
    [[nodiscard]] int prompted() const { return prompted_; }

    // Once the program edits the line, which it begins to do just after it prints the prompt: until
    // then the terminal would take an arrow for text.
    void type(const std::string& keys) const;
    // Types a line and Enter; the answer to it.
    std::string enter(const std::string& line);

    void kill(); // with no chance to do anything
    int wait();  // its exit code, once it has ended by itself

  private:
    void await_editing() const;

    pid_t child_ = -1;
    int screen_ = -1;
    int prompted_ = 0;
};
