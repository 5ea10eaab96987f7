// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The speeds of a machine's spindle, in turns a minute.
#pragma once

#include <string>

#include "trade/machine.hpp"

namespace cli {

// Reads steps in any order, `250, 500, 1000, 2000`, or a range, `150 to 3000` or `150 .. 3000`,
// within which any speed can be set. Throws error::BadData for anything but whole numbers from 1 to
// 100000, a step that comes twice, and a range that does not rise.
void read_turns(const std::string& text, trade::Machine& machine);

// As `read_turns` reads it, steps ascending; empty when the speeds are not known.
[[nodiscard]] std::string turns_text(const trade::Machine& machine);

} // namespace cli
