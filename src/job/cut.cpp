// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/cut.hpp"

namespace job {

using length::exactly;
using length::Length;
using length::Range;

namespace {

constexpr auto k_geometry = "geometry";
constexpr auto k_practice = "common practice";

std::string head_source(const trade::Screw& screw) {
    return screw.origin.source.empty() ? "as measured" : screw.origin.source;
}

// The published counterbore that says how much deeper than the head it is, or null.
const trade::Counterbore* standard_addition(const trade::Screw& screw) {
    for (const auto& row : screw.counterbores)
        if (row.kind == "recommended" && row.depth_addition)
            return &row;
    return nullptr;
}

} // namespace

Figure drilled_hole(const trade::Drill& drill, const Range& hole) {
    return {"hole",
            hole,
            "the drill's own size, to that + the most it cuts over",
            {{"drill " + drill.name, exactly(drill.diameter)},
             {"cuts over, most", exactly(hole.hi - drill.diameter)}},
            "the larger of Machinery's Handbook, oversize diameters in drilling (from memory), and "
            "the drilled-hole limits of AND10387"};
}

Figure counterbore_left(const Range& cutter, const trade::Practice& practice) {
    return {"counterbore",
            Range{cutter.lo, cutter.hi + practice.counterbore_over},
            "cutter, to cutter + what it may cut over",
            {{"cutter", cutter}, {"may cut over", exactly(practice.counterbore_over)}},
            k_practice};
}

Figure stop_travel(const match::Question& question, Length depth, const trade::Practice& practice) {
    const auto& screw = question.screw;
    Figure figure{"stop travel", exactly(depth), {}, {}, {}, Grain::stop};
    if (screw.hex) {
        figure.formula = "spotface, or until it cleans up";
        figure.inputs.push_back({"spotface", exactly(practice.spotface_depth)});
        figure.source = k_practice;
        return figure;
    }
    figure.formula = "greatest head height";
    figure.inputs.push_back({"head height", *screw.head_height});
    if (question.washer) {
        figure.formula += " + washer";
        figure.inputs.push_back({"washer", *question.washer->thickness});
    }
    const auto* standard = question.below ? nullptr : standard_addition(screw);
    const auto* added = standard ? "the standard's addition" : "below the surface";
    figure.formula += std::string(" + ") + added;
    figure.inputs.push_back({added, exactly(match::below_surface(question, practice))});
    figure.source =
        head_source(screw) + "; " + (standard ? standard->origin.source : "below: shop practice");
    return figure;
}

Figure gauge_reading(Length depth, const trade::Practice& practice) {
    return {"depth gauge reads",
            Range{depth, depth + practice.stop_within},
            "depth, to depth + what the stop repeats within",
            {{"depth", exactly(depth)}, {"stop within", exactly(practice.stop_within)}},
            k_practice};
}

std::optional<Figure> head_upside_down(const match::Question& question, Length depth,
                                       const trade::Practice& practice) {
    const auto& head = question.screw.head_height;
    if (!head || question.screw.hex)
        return std::nullopt;
    return Figure{"head upside down lies below",
                  Range{depth - head->hi, depth + practice.stop_within - head->lo},
                  "depth - head height",
                  {{"depth", Range{depth, depth + practice.stop_within}}, {"head height", *head}},
                  k_geometry};
}

std::optional<Figure> quill_travel(Length depth, const length::MaybeRange& pilot_length) {
    if (!pilot_length)
        return std::nullopt;
    return Figure{"quill travel",
                  *pilot_length + depth,
                  "pilot length + depth",
                  {{"pilot length", *pilot_length}, {"depth", exactly(depth)}},
                  k_geometry};
}

} // namespace job
