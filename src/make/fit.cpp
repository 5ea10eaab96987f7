// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/fit.hpp"

#include <algorithm>

#include "length/grid.hpp"

namespace make {

using length::Length;
using length::micrometres;
using length::Range;

namespace {

// ISO 286-2: deviations of e8, micrometres under the nominal.
struct Deviation {
    std::int64_t up_to_mm;
    std::int64_t upper, lower;
};
constexpr Deviation k_e8[]{
    {3, 14, 28},  {6, 20, 38},  {10, 25, 47},  {18, 32, 59},
    {30, 40, 73}, {50, 50, 89}, {80, 60, 106}, {120, 72, 126},
};

} // namespace

Range e8(Length nominal) {
    const auto* row = std::find_if(std::begin(k_e8), std::end(k_e8) - 1, [&](const Deviation& d) {
        return nominal <= length::millimetres(d.up_to_mm);
    });
    return {nominal - micrometres(row->lower), nominal - micrometres(row->upper)};
}

Range usual_pilot(const match::CandidateHole& hole, const trade::Practice& practice) {
    if (hole.drill && hole.drill->kind == trade::DrillKind::metric)
        return e8(hole.drill->diameter);
    const Length least = hole.drill ? hole.drill->diameter : hole.hole.lo;
    return {least - practice.pilot_under_most, least - practice.pilot_under_least};
}

Range around(Length aim, Length tolerance, const Range& limits, Length step) {
    const Length width = round_down(std::min(tolerance, limits.hi - limits.lo), step);
    const Length lo = std::clamp(round_down(aim - width / 2, step), limits.lo, limits.hi - width);
    return {lo, lo + width};
}

} // namespace make
