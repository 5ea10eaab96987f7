// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// From one size to another, as a filter or a chuck has it.
#pragma once

#include <string>

#include "length/range.hpp"

namespace cli {

// Reads `3/8 to 1/2`, `3/8 .. 1/2`, or one size, which is itself only. Bare numbers are in `bare`;
// a unit at the end alone counts for both. Throws error::BadData.
[[nodiscard]] length::Range read_span(const std::string& text, length::Unit bare);

} // namespace cli
