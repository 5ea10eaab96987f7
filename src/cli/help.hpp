// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The text of `--help`: usage, what it is for, arguments and options, and for the program the
// commands by task.
#pragma once

#include <CLI/CLI.hpp>
#include <string>

namespace cli {

class HelpFormatter : public CLI::FormatterBase {
  public:
    explicit HelpFormatter(std::size_t width) : width_(width) {}

    [[nodiscard]] std::string make_help(const CLI::App* app, std::string name,
                                        CLI::AppFormatMode mode) const override;

  private:
    std::size_t width_;
};

// `counterpart match`: the words that lead to this (sub)command.
[[nodiscard]] std::string full_name(const CLI::App& app);

} // namespace cli
