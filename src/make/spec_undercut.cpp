// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The relief in the corner of shank and shoulder: DIN 509 form F, which relieves both, where the
// shoulder is wide enough for it, else form E, which leaves the shoulder whole.
#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "length/grid.hpp"
#include "make/spec_dimensions.hpp"

namespace make {

using length::Length;
using length::micrometres;
using length::Range;
using length::Unit;

namespace {

constexpr auto k_source = "DIN 509";

// DIN 509:1998, usual stress, series 1 where it has the size; the row to 1.6 mm is of the edition
// before. Micrometres: radius +-100 (+-50 in the first row), t1 +100, f +200, t2 +50.
struct Row {
    Length shank_up_to;
    const char* size;
    std::int64_t radius, radius_within, t1, f, g, t2;
};
constexpr Row k_rows[]{
    {micrometres(1600), "0.1 x 0.1", 100, 50, 100, 500, 800, 100},
    {micrometres(3000), "0.2 x 0.1", 200, 100, 100, 1000, 900, 100},
    {micrometres(18000), "0.4 x 0.2", 400, 100, 200, 2000, 1100, 100},
    {micrometres(80000), "0.8 x 0.3", 800, 100, 300, 2500, 2400, 200},
};

Dimension of_table(const char* name, std::int64_t least, std::int64_t most, Unit unit) {
    const Length step = in_unit(unit, length::thousandths(1), micrometres(10));
    return {name, inward(Range{micrometres(least), micrometres(most)}, step), {}, k_source};
}

} // namespace

Undercut undercut_for(const Range& shank, const Range& nose, Unit unit) {
    const auto* row = std::find_if(std::begin(k_rows), std::end(k_rows) - 1,
                                   [&](const Row& r) { return middle(shank) <= r.shank_up_to; });
    // Not deeper than a tenth of the shank, or it would be weak there (common practice).
    const auto deepest = std::min(row->t1 + 100, shank.lo.nm() / 10'000);
    const Length shoulder = (nose.lo - shank.hi) / 2;
    const bool face = shoulder >= k_least_shoulder + micrometres(row->g);
    Undercut undercut;
    undercut.name = fmt::format("DIN 509 - {} {}", face ? 'F' : 'E', row->size);
    undercut.width = of_table("undercut width", row->f, row->f + 200, unit);
    undercut.depth = of_table("undercut depth", std::min(row->t1, deepest - 50), deepest, unit);
    undercut.radius = of_table("undercut radius", row->radius - row->radius_within,
                               row->radius + row->radius_within, unit);
    if (face) {
        undercut.face_depth = of_table("undercut in the face", row->t2, row->t2 + 50, unit);
        undercut.face_height = micrometres(row->g);
    }
    return undercut;
}

} // namespace make
