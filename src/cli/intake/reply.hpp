// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is printed after a line: the number to put on the tool, what was understood, what was taken
// over, the screws it serves, the tools it may be a double of, and what is not known.
#pragma once

#include <string>

#include "cli/intake/line.hpp"
#include "cli/tool.hpp"

namespace cli::intake {

[[nodiscard]] std::string reply(const Tool& tool, const Line& line, Context& context);

} // namespace cli::intake
