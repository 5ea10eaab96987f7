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

} // namespace

Figure drilled_hole(const trade::Drill& drill, const trade::Oversize& at) {
    return {
        "hole",
        Range{drill.diameter + at.least, drill.diameter + at.most},
        "drill + average oversize, least to most",
        {{"drill " + drill.name, exactly(drill.diameter)}, {"oversize", Range{at.least, at.most}}},
        "Machinery's Handbook, oversize diameters in drilling (from memory)"};
}

Figure counterbore_left(const Range& cutter, const trade::Practice& practice) {
    return {"counterbore",
            Range{cutter.lo, cutter.hi + practice.counterbore_over},
            "cutter, to cutter + what it may cut over",
            {{"cutter", cutter}, {"may cut over", exactly(practice.counterbore_over)}},
            k_practice};
}

Figure depth_to_cut(const match::Question& question, Length depth,
                    const trade::Practice& practice) {
    const auto& screw = question.screw;
    Figure figure{"depth", exactly(depth), {}, {}, head_source(screw) + "; below: shop practice"};
    if (screw.hex) {
        figure.formula = "spotface";
        figure.inputs.push_back({"spotface", exactly(practice.spotface_depth)});
        figure.source = k_practice;
    } else {
        figure.formula = "greatest head height";
        figure.inputs.push_back({"head height", *screw.head_height});
    }
    if (question.washer) {
        figure.formula += " + washer";
        figure.inputs.push_back({"washer", *question.washer->thickness});
    }
    figure.formula += " + below the surface";
    figure.inputs.push_back(
        {"below the surface", exactly(match::below_surface(question, practice))});
    return figure;
}

std::optional<Figure> depth_by_standard(const match::Question& question) {
    const auto& screw = question.screw;
    if (!screw.head_height || (question.washer && !question.washer->thickness))
        return std::nullopt;
    for (const auto& row : screw.counterbores) {
        if (!row.depth_addition)
            continue;
        const Length washer = question.washer ? question.washer->thickness->hi : Length();
        Figure figure{"depth by " + row.rule,
                      exactly(screw.head_height->hi + washer + *row.depth_addition),
                      "greatest head height + washer + addition",
                      {{"head height", *screw.head_height}},
                      row.origin.source};
        if (question.washer)
            figure.inputs.push_back({"washer", *question.washer->thickness});
        figure.inputs.push_back({"addition", exactly(*row.depth_addition)});
        return figure;
    }
    return std::nullopt;
}

Figure stop_travel(Length depth) {
    return {"stop travel",
            exactly(depth),
            "depth, from all lips touching the top face, the lowest edge of a rough one",
            {{"depth", exactly(depth)}},
            k_geometry};
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
