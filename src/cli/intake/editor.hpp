// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Lines typed at a terminal, with editing and the lines before them at the arrow keys.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace cli::intake {

class Editor {
  public:
    // `before`: earlier lines, oldest first. Throws error::InputOutput where the terminal will not
    // do.
    explicit Editor(const std::vector<std::string>& before);
    ~Editor();
    Editor(const Editor&) = delete;
    Editor& operator=(const Editor&) = delete;

    // The next line, without its end; it joins those before it. Empty at the end of input.
    [[nodiscard]] std::optional<std::string> line(const std::string& prompt);

  private:
    struct Parts;
    void remember(const std::string& line);
    std::unique_ptr<Parts> parts_;
};

} // namespace cli::intake
