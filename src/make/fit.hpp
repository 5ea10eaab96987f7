// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Limits that are fitted round an aim.
#pragma once

#include "length/range.hpp"

namespace make {

// As wide as `tolerance` or as `limits` are, around `aim` moved as little as `limits` ask; ends on
// whole steps if those of `limits` are.
[[nodiscard]] length::Range around(length::Length aim, length::Length tolerance,
                                   const length::Range& limits, length::Length step);

} // namespace make
