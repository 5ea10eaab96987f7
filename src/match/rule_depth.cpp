// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

using trade::BodyKind;

namespace {

bool sinks_heads(BodyKind kind) {
    return kind == BodyKind::counterbore || kind == BodyKind::unknown;
}

bool reach_assumed(const trade::BodyFacts& body) {
    return !body.reach && body.cut_dia && body.kind == BodyKind::counterbore;
}

// A counterbore whose reach nobody recorded is taken to reach its own cutting diameter (common
// practice); other tools are not.
length::MaybeRange reach_of(const trade::BodyFacts& body) {
    return reach_assumed(body) ? body.cut_dia : body.reach;
}

bool wrong_kind(const Job& job, const Triple& triple) {
    return !job.question->screw.hex && !sinks_heads(triple.body->kind);
}

} // namespace

Finding judge_depth(const Job& job, const Triple& triple) {
    Finding finding{Rule::depth, Verdict::unknown, {}, false};
    const auto reach = reach_of(*triple.body);
    if (wrong_kind(job, triple)) {
        finding.verdict = Verdict::fail;
        // Farther off than any tool of the right kind.
        finding.shortfall = {job.shop->practice.closest_share, 1000};
    } else if (reach && job.depth) {
        finding.verdict = at_least(*reach, *job.depth);
        if (finding.verdict == Verdict::fail)
            finding.shortfall = {(*job.depth - reach->hi).nm(), job.depth->nm()};
    }
    return finding;
}

Explanation explain_depth(const Job& job, const Triple& triple, const Records&, length::Unit unit) {
    const auto& body = *triple.body;
    Explanation explanation;
    explanation.need = job.depth ? "reach " + say(*job.depth, unit) + " or more"
                                 : "reach for a head height or washer that is not known";
    if (wrong_kind(job, triple)) {
        explanation.need += ", with a counterbore";
        explanation.have = body.kind == BodyKind::other
                               ? "a tool of another kind"
                               : "a " + std::string(trade::to_text(body.kind)) + ": for spotfaces";
        return explanation;
    }
    explanation.have = "reach " + say(reach_of(body), unit);
    if (reach_assumed(body))
        explanation.have += ", not recorded: taken as the cutting diameter";
    return explanation;
}

} // namespace match
