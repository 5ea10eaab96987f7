// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/command.hpp"

#include <CLI/CLI.hpp>
#include <utility>

namespace cli {

void when_chosen(CLI::App& app, std::function<void()> act) {
    app.callback(std::move(act));
}

} // namespace cli
