// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A set screw's size as recorded, read without the project's own parser.
#pragma once

#include <optional>
#include <string_view>

#include "length/length.hpp"

namespace oracle {

// Major diameter of `#8-32`, `1/4-20` or `M5`: .060 in + .013 in a number (ASME B1.1), or as named.
// Absent for empty text.
[[nodiscard]] std::optional<length::Length> major_diameter(std::string_view set_screw);

} // namespace oracle
