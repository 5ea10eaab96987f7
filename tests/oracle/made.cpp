// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "oracle/made.hpp"

#include <algorithm>
#include <array>
#include <string>

#include "oracle/iso286.hpp"
#include "oracle/sizes.hpp"

namespace oracle {

using length::Length;
using length::Range;

namespace {

// A published tool is less than this from the handbook's tool for the head.
const Length k_near_tool = length::thousandths(2);

bool overlap(const Range& a, const Range& b) {
    return a.lo <= b.hi && b.lo <= a.hi;
}

// What a cutter so marked may measure.
Range cutter_of(const Context& context, Length nominal, bool metric) {
    const trade::Practice& practice = context.shop.practice;
    if (!metric) {
        return {nominal - practice.mark_cutter_under, nominal + practice.mark_cutter_over};
    }
    const Grades grades = grades_of(nominal);
    return {nominal - practice.mark_metric_cutter_wear, nominal + grades.z + grades.it9};
}

// What a pilot for a hole so named may measure.
Range pilot_of(const Context& context, Length nominal, bool metric) {
    const trade::Practice& practice = context.shop.practice;
    if (!metric) {
        return {nominal - practice.pilot_under_hole.most, nominal};
    }
    const Grades grades = grades_of(nominal);
    return {nominal - grades.e - grades.it8 - practice.mark_metric_pilot_wear, nominal};
}

bool serves_a_head(const std::string& kind) {
    constexpr std::array kinds = {"recommended",   "tool",         "spotface",
                                  "socket wrench", "ring spanner", "other"};
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

bool in_millimetres(const trade::PublishedTool& tool) {
    return tool.unit == length::Unit::millimetre;
}

std::vector<Range> cutters_for(const Context& context) {
    const trade::Screw& screw = context.question.screw;
    const std::optional<Targets> target = targets(context.question, context.shop);
    std::vector<Range> found;
    const auto& washer = context.question.washer;
    if (!target || (washer && screw.head_dia && washer->outside_dia.hi > screw.head_dia->hi)) {
        return found;
    }
    for (const trade::Counterbore& row : screw.counterbores) {
        if (serves_a_head(row.kind)) {
            found.push_back(cutter_of(context, row.diameter, is_metric(screw)));
        }
    }
    for (const trade::PublishedTool& tool : screw.tools) {
        const length::MaybeRange& cut = tool.cut_dia.listed;
        if (cut && cut->lo > target->tool - k_near_tool && cut->hi < target->tool + k_near_tool) {
            found.push_back(cutter_of(context, cut->lo, in_millimetres(tool)));
        }
    }
    return found;
}

bool of_one(const std::vector<Range>& listed, const Range& size) {
    return std::any_of(listed.begin(), listed.end(),
                       [&](const Range& one) { return overlap(one, size); });
}

// Of the tools whose cutter this may be.
std::vector<Range> pilots_for(const Context& context, const std::vector<Range>& cutters,
                              const Range& body_cut) {
    std::vector<Range> found;
    for (const trade::PublishedTool& tool : context.question.screw.tools) {
        const length::MaybeRange& cut = tool.cut_dia.listed;
        const length::MaybeRange& pilot = tool.pilot_dia.listed;
        if (cut && pilot && of_one(cutters, *cut) &&
            overlap(cutter_of(context, cut->lo, in_millimetres(tool)), body_cut)) {
            found.push_back(pilot_of(context, pilot->lo, in_millimetres(tool)));
        }
    }
    return found;
}

// It holds the size and a word for the form, each between blanks.
bool marked_for(const trade::Screw& screw, const trade::Body& body) {
    const auto holds = [text = " " + body.marking + " "](const std::string& word) {
        return text.find(" " + word + " ") != std::string::npos;
    };
    return screw.size && holds(screw.size->text) &&
           std::any_of(screw.form_words.begin(), screw.form_words.end(), holds);
}

} // namespace

Made how_made(const Context& context, const Triple& triple) {
    if (marked_for(context.question.screw, *triple.body)) {
        return Made::by_marking;
    }
    const std::vector<Range> cutters = cutters_for(context);
    const length::MaybeRange cut = trade::range_of(triple.body->cut_dia);
    if (!cut || !of_one(cutters, *cut)) {
        return Made::not_so;
    }
    const HoleClass hole = hole_class(context.question, context.shop, triple.hole);
    const std::optional<Nose> nose = nose_of(triple);
    if (nose && nose->dia && of_one(pilots_for(context, cutters, *cut), *nose->dia)) {
        return Made::by_sizes;
    }
    return hole <= HoleClass::loose ? Made::for_the_head : Made::by_cutter_alone;
}

int made_rank(const Context& context, const Triple& triple) {
    const Made made = how_made(context, triple);
    if (made <= Made::by_sizes) {
        return 0;
    }
    return made == Made::for_the_head ? 1 : 2;
}

} // namespace oracle
