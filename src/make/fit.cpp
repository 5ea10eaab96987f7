// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/fit.hpp"

#include <algorithm>

#include "length/grid.hpp"
#include "trade/tolerance.hpp"

namespace make {

using length::Length;
using length::Range;

Range usual_pilot(const match::CandidateHole& hole, const trade::Practice& practice,
                  length::Unit unit) {
    const Length least = hole.size.lo;
    const bool metric = hole.drill ? hole.drill->kind == trade::DrillKind::metric
                                   : unit == length::Unit::millimetre;
    if (metric)
        return trade::e8_limits(least);
    return {least - practice.pilot_under_most, least - practice.pilot_under_least};
}

Range around(Length aim, Length tolerance, const Range& limits, Length step) {
    const Length width = round_down(std::min(tolerance, limits.hi - limits.lo), step);
    const Length lo = std::clamp(round_down(aim - width / 2, step), limits.lo, limits.hi - width);
    return {lo, lo + width};
}

} // namespace make
