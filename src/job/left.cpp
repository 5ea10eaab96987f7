// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/left.hpp"

#include <algorithm>

namespace job {

using length::exactly;
using length::Length;
using length::Range;

namespace {

constexpr auto k_geometry = "geometry";
constexpr auto k_practice = "common practice";
constexpr double k_whole_share = 1000;

Length share_of(Length whole, std::int64_t share) {
    return Length::from_nm(whole.nm() * share / 1000);
}

Measure number(std::int64_t share) {
    const double part = static_cast<double>(share) / k_whole_share;
    return {Kind::number, part, part};
}

} // namespace

std::optional<Figure> edge_break(const trade::Screw& screw, const Range& hole) {
    if (!screw.fillet_dia || *screw.fillet_dia <= hole.lo)
        return std::nullopt;
    return Figure{"edge of the hole broken to",
                  exactly(*screw.fillet_dia),
                  "diameter of the fillet under the head, which is over the hole",
                  {{"fillet", exactly(*screw.fillet_dia)}, {"hole", hole}},
                  screw.origin.source + "; ASME B18.3 appendix: no larger than clears the fillet"};
}

Figure left_under_head(const Range& thick, Length depth) {
    return {"left under the head",
            thick - exactly(depth),
            "thickness - depth",
            {{"thickness", thick}, {"depth", exactly(depth)}},
            k_geometry};
}

Figure usual_ledge(const length::Range& screw_dia, const trade::Practice& practice) {
    return {"usually left, at least",
            exactly(share_of(screw_dia.hi, practice.ledge_usual)),
            "share of the screw's diameter; one diameter in steel and iron, one and a half in "
            "aluminium",
            {{"share", number(practice.ledge_usual)}, {"screw", screw_dia}},
            k_practice};
}

Length least_ledge(const Range& screw_dia, const trade::Practice& practice) {
    return share_of(screw_dia.hi, practice.ledge_least);
}

Figure hole_below_seat(const Range& blind, Length depth) {
    return {"hole below the seat",
            blind - exactly(depth),
            "depth of the hole - depth of the counterbore",
            {{"hole", blind}, {"counterbore", exactly(depth)}},
            k_geometry};
}

Figure wall_to_edge(const Range& to_edge, const Range& counterbore) {
    return {"wall to the edge",
            Range{to_edge.lo - counterbore.hi / 2, to_edge.hi - counterbore.lo / 2},
            "axis to the edge - half the counterbore",
            {{"axis to the edge", to_edge}, {"counterbore", counterbore}},
            k_geometry};
}

Figure least_wall(const Range& cutter, const trade::Practice& practice) {
    return {"wall should be, at least",
            exactly(std::max(share_of(cutter.hi, practice.wall_share), practice.wall_least)),
            "share of the cutter, or the least, whichever is greater",
            {{"share", number(practice.wall_share)},
             {"cutter", cutter},
             {"least", exactly(practice.wall_least)}},
            k_practice};
}

} // namespace job
