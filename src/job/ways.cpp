// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/ways.hpp"

#include <algorithm>
#include <array>

#include "job/shop_text.hpp"
#include "match/say.hpp"
#include "trade/text.hpp"

namespace job {

using match::AnswerKind;
using match::say;

namespace {

struct Subject {
    const match::Question& question;
    const match::Report& report;
    length::Unit unit;

    [[nodiscard]] std::string suffix() const { return unit == length::Unit::inch ? " in" : " mm"; }
    [[nodiscard]] std::string cutter() const {
        return report.wanted.cutter ? shop_text(*report.wanted.cutter, unit) + suffix()
                                    : "a size that clears the head, once it is measured";
    }
    [[nodiscard]] std::string depth() const {
        return report.wanted.depth ? shop_text(*report.wanted.depth, unit) + suffix() + " deep"
                                   : "as deep as the head is high";
    }
};

const match::Answer* first_of(const match::Report& report, AnswerKind kind) {
    for (const auto& answer : report.answers)
        if (answer.kind == kind)
            return &answer;
    return nullptr;
}

using MaybeWay = std::optional<Way>;

MaybeWay make_a_pilot(const Subject& subject) {
    const auto* answer = first_of(subject.report, AnswerKind::make_pilot);
    if (!answer)
        return std::nullopt;
    const auto& wanted = subject.report.wanted;
    return Way{"make a pilot",
               "for body " + std::to_string(answer->body) + ", to run in " +
                   (wanted.drill ? "drill " + wanted.drill->name : std::string("the hole")) +
                   (wanted.pilot ? ": " + say(*wanted.pilot, subject.unit) : "") +
                   "; `make-list` has its drawing",
               "a lathe, and the body's bore measured or at hand to try the shank in",
               "a hard pilot with a sharp corner at the shoulder snaps: undercut it"};
}

MaybeWay nearest_body(const Subject& subject) {
    const auto* answer = first_of(subject.report, AnswerKind::closest);
    if (!answer)
        return std::nullopt;
    return Way{
        "a body from the nearest sizes",
        "body " + std::to_string(answer->body) + " comes nearest: " + match::next_step(*answer),
        "the shortfall is allowed by whoever answers for the joint, or another drill or head "
        "removes it",
        "do not grind a pilot or cutter that serves other screws"};
}

MaybeWay end_mill(const Subject& subject) {
    return Way{"end mill",
               "of " + subject.cutter() + ", plunged " + subject.depth() +
                   " over the drilled hole, in one setting with the drill",
               "a rigid machine, the mill in a collet or holder, spindle over the hole's axis; the "
               "plunge leaves the floor slightly convex: sweep it flat or bore the last of it",
               "not in a drill chuck: side load pulls the mill out; clamp the work, feed slowly"};
}

MaybeWay boring(const Subject& subject) {
    return Way{"boring",
               "to " + subject.cutter() + ", " + subject.depth() +
                   ", with a tool ground to face the floor square",
               "a boring head on the mill, or the work true in the lathe; right for a few holes, "
               "and the truest floor",
               "no overhanging bar at speed; balance the work on a face plate"};
}

MaybeWay squared_drill(const Subject& subject) {
    return Way{
        "drill with its point squared after drilling",
        "a drill of " + subject.cutter() +
            " to a little less than depth, then one of the same size ground flat across, to " +
            subject.depth(),
        "the drilled cone guides the flat drill; relief behind both lips, which are level; "
        "try the floor with blue",
        "a flat drill has no centre and grabs: clamp the work, slow, steady feed; never in a "
        "hand drill"};
}

MaybeWay spotface(const Subject& subject) {
    if (subject.question.screw.hex)
        return std::nullopt;
    return Way{"spotface", "a flat seat of " + subject.cutter() + " only as deep as cleans up",
               "the head may stand above the surface",
               "a proud head catches clothes and work on moving parts"};
}

using Make = MaybeWay (*)(const Subject&);

// Common practice, no source: what each machine does best comes first.
const std::vector<Make>& ways_on(On on) {
    static const std::array<std::vector<Make>, 3> k_ways{{
        {make_a_pilot, nearest_body, squared_drill, spotface, end_mill, boring},
        {make_a_pilot, end_mill, boring, nearest_body, squared_drill, spotface},
        {make_a_pilot, boring, squared_drill, nearest_body, end_mill, spotface},
    }};
    return k_ways[static_cast<std::size_t>(on)];
}

} // namespace

std::optional<On> read_on(std::string_view text) {
    const auto word = trade::folded(text);
    if (word == "drill press" || word == "drillpress")
        return On::drill_press;
    if (word == "mill")
        return On::mill;
    if (word == "lathe")
        return On::lathe;
    return std::nullopt;
}

std::vector<Way> other_ways(const match::Question& question, const match::Report& report, On on,
                            length::Unit unit) {
    const Subject subject{question, report, unit};
    std::vector<Way> ways;
    for (const auto make : ways_on(on))
        if (auto way = make(subject))
            ways.push_back(std::move(*way));
    return ways;
}

} // namespace job
