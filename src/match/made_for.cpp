// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/made_for.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "trade/dimension.hpp"
#include "trade/tolerance.hpp"

namespace match {

using length::Length;
using length::Range;

namespace {

// Handbooks round the tool of a head to the thousandth.
constexpr Length k_rounding = length::thousandths(2);

// Kinds of published counterbores that are cut for a head, with or without room for a wrench;
// derived ones are no tool's.
constexpr std::array<std::string_view, 6> k_kinds{"recommended",   "tool",         "spotface",
                                                  "socket wrench", "ring spanner", "other"};

bool is_of_a_tool(const trade::Counterbore& row) {
    return std::find(k_kinds.begin(), k_kinds.end(), row.kind) != k_kinds.end();
}

Range marked_cutter(Length nominal, length::Unit unit, const trade::Practice& practice) {
    return trade::limits_of({nominal, unit, false}, trade::How::mark, trade::Feature::cut_dia,
                            practice);
}

// Named after its hole, or after itself.
Range marked_pilot(Length nominal, length::Unit unit, const trade::Practice& practice) {
    if (unit == length::Unit::millimetre)
        return {trade::e8_limits(nominal).lo - practice.mark_metric_pilot_wear, nominal};
    return {nominal - practice.pilot_under_hole.most, nominal};
}

bool holds(const Range& limits, const Range& size) {
    return limits.lo <= size.lo && size.hi <= limits.hi;
}

bool near_to(Length a, Length b) {
    return a < b + k_rounding && b < a + k_rounding;
}

} // namespace

bool is_of(const std::vector<Range>& listed, const length::MaybeRange& size) {
    return size && std::any_of(listed.begin(), listed.end(),
                               [&](const Range& one) { return holds(one, *size); });
}

bool is_listed(const std::vector<MadeTool>& tools, const length::MaybeRange& cutter,
               const length::MaybeRange& pilot) {
    return cutter && pilot && std::any_of(tools.begin(), tools.end(), [&](const MadeTool& tool) {
               return holds(tool.cutter, *cutter) && holds(tool.pilot, *pilot);
           });
}

MadeFor made_for(const trade::Screw& screw, const SizeTargets& sizes,
                 const trade::Practice& practice) {
    MadeFor made;
    const auto unit = screw.is_metric() ? length::Unit::millimetre : length::Unit::inch;
    for (const auto& row : screw.counterbores)
        if (is_of_a_tool(row))
            made.cutters.push_back(marked_cutter(row.diameter, unit, practice));
    for (const auto& tool : screw.tools)
        if (tool.cut_dia.listed && near_to(tool.cut_dia.listed->lo, sizes.tool))
            made.cutters.push_back(marked_cutter(tool.cut_dia.listed->lo, tool.unit, practice));
    for (const auto& tool : screw.tools) {
        if (!tool.cut_dia.listed || !tool.pilot_dia.listed)
            continue;
        const Length cut = tool.cut_dia.listed->lo;
        if (is_of(made.cutters, length::exactly(cut)))
            made.tools.push_back({marked_cutter(cut, tool.unit, practice),
                                  marked_pilot(tool.pilot_dia.listed->lo, tool.unit, practice)});
    }
    return made;
}

} // namespace match
