// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a tool is, without its number, its place and who has it: for a column beside those.
#pragma once

#include <string>

#include "cli/tool.hpp"

namespace cli {

// `counterbore 7/16, removable pilot, bore 3/16`.
[[nodiscard]] std::string what_it_is(Tool tool, length::Unit stored);

} // namespace cli
