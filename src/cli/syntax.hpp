// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What may be typed after a command's name. Commands declare it through these handles, because the
// header of the option parser behind them costs every file that takes it seconds to compile.
#pragma once

#include <cstddef>
#include <functional>
#include <string>

namespace CLI {
class App;
class Option;
} // namespace CLI

namespace cli {

// An option, a flag or a word, as declared.
class Option {
  public:
    explicit Option(CLI::Option* option) : option_(option) {}

    Option required() const;
    Option takes(const std::string& what) const; // as --help calls its value: FILE, SIZE
    Option between(int least, int most) const;
    Option excludes(const Option& other) const;
    Option needs(const Option& other) const;

  private:
    CLI::Option* option_;
};

// A command or a verb of one. What is given on the command line goes into `value`, which lives as
// long as the program parses: `chosen` in command.hpp sees to that.
class Syntax {
  public:
    explicit Syntax(CLI::App& app) : app_(&app) {}

    // Of std::string, std::vector<std::string>, int and std::size_t.
    template <class Value>
    Option word(const std::string& name, Value& value, const std::string& about) const;
    template <class Value>
    Option option(const std::string& name, Value& value, const std::string& about) const;

    Option option(const std::string& name, std::function<void(const std::string&)> take,
                  const std::string& about) const;
    Option flag(const std::string& name, bool& value, const std::string& about) const;

    [[nodiscard]] Syntax verb(const std::string& name, const std::string& about) const;
    void needs_verb() const;
    void may_have_verb() const;
    void footer(const std::string& text) const;

    [[nodiscard]] bool has(const std::string& name) const;
    [[nodiscard]] Option named(const std::string& name) const; // which is there

    // Calls `act` when this is on the command line.
    void when_chosen(std::function<void()> act) const;
    // `counterpart loan back`: the verb on the command line in full, or empty.
    [[nodiscard]] std::string chosen_verb() const;

  private:
    CLI::App* app_;
};

} // namespace cli
