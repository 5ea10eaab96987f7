// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "oracle/met.hpp"

#include "oracle/made.hpp"
#include "oracle/sizes.hpp"

namespace oracle {

using match::Verdict;

namespace {

std::optional<Verdict> verdict_of(const Candidate& candidate, std::string_view rule) {
    for (const Ruling& ruling : candidate.rulings) {
        if (ruling.rule == rule) {
            return ruling.judged.verdict;
        }
    }
    return std::nullopt;
}

// A drilled hole that surely takes the teeth as it comes out, but not as the drill is.
bool teeth_by_drill_alone(const Candidate& candidate) {
    const length::MaybeRange bore = trade::range_of(candidate.triple.body->bore);
    const HoleChoice& hole = candidate.triple.hole;
    return hole.drill && bore && bore->lo <= hole.range->hi && bore->hi > hole.drill->diameter;
}

bool thick_is_unknown(const Candidate& candidate) {
    return verdict_of(candidate, "pilot has room and guidance") == Verdict::unknown;
}

struct Facts {
    const match::Question& question;
    const Candidate& found;
    const trade::Body& body;
    bool chosen, no_length;
};

void add_holes(const Facts& facts, std::vector<std::string>& met) {
    if (facts.found.hole == HoleClass::size_on_size) {
        met.emplace_back("size on size");
    }
    if (facts.found.triple.hole.reamed) {
        met.emplace_back("reamed for a shoulder");
    }
    if (facts.question.hole.tapped) {
        met.emplace_back("tap hole");
    }
    if (facts.chosen && teeth_by_drill_alone(facts.found)) {
        met.emplace_back("teeth by the drill alone");
    }
}

void add_room(const Facts& facts, std::vector<std::string>& met) {
    if (facts.no_length && facts.question.thick && !facts.question.blind) {
        met.emplace_back(thick_is_unknown(facts.found)
                             ? "thick, pilot of unrecorded length asked for"
                             : "thick, pilot of unrecorded length taken");
    }
    if (facts.no_length && facts.question.blind && thick_is_unknown(facts.found)) {
        met.emplace_back("blind, pilot of unrecorded length asked for");
    }
    if (facts.question.screw.hex && !facts.body.reach) {
        met.emplace_back("spotface without a reach");
    }
    if (!facts.question.below && !facts.question.screw.counterbores.empty() &&
        facts.question.screw.counterbores.back().depth_addition) {
        met.emplace_back("depth by the counterbore's standard");
    }
}

void add_holding(const Context& context, const Facts& facts, std::vector<std::string>& met) {
    if (facts.found.triple.pilot == nullptr) {
        return;
    }
    if (holds_otherwise(facts.body) && tried(context, facts.found.triple)) {
        met.emplace_back("held otherwise, tried");
    }
    if (!facts.body.retention && holds_by(facts.body)) {
        met.emplace_back("held by a set screw that is seen");
    }
}

} // namespace

std::vector<std::string> met_by(const Context& context, const Candidate& candidate) {
    const std::optional<Nose> nose = nose_of(candidate.triple);
    const bool no_length = nose && nose->dia && !nose->length;
    const bool chosen = context.question.hole.kind == match::HoleKind::chosen;
    const Facts facts{context.question, candidate, *candidate.triple.body, chosen, no_length};
    std::vector<std::string> met;
    add_holes(facts, met);
    add_room(facts, met);
    add_holding(context, facts, met);
    switch (how_made(context, candidate.triple)) {
    case Made::by_marking:
        met.emplace_back("made for it by its marking");
        break;
    case Made::by_sizes:
    case Made::for_the_head:
        met.emplace_back("made for it by its sizes");
        break;
    case Made::by_cutter_alone:
        met.emplace_back("cutter of a tool, pilot not");
        break;
    default:
        break;
    }
    return met;
}

} // namespace oracle
