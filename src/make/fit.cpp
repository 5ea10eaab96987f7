// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/fit.hpp"

#include <algorithm>

#include "length/grid.hpp"

namespace make {

using length::Length;
using length::Range;

Range around(Length aim, Length tolerance, const Range& limits, Length step) {
    const Length width = round_down(std::min(tolerance, limits.hi - limits.lo), step);
    const Length lo = std::clamp(round_down(aim - width / 2, step), limits.lo, limits.hi - width);
    return {lo, lo + width};
}

} // namespace make
