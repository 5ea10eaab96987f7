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

length::MaybeRange reach_of(const Job& job, const trade::BodyFacts& body) {
    return assumes_reach(job, body) ? body.cut_dia : body.reach;
}

// Any tool cleans up a face.
bool cleans_up(const Job& job, const trade::BodyFacts& body) {
    return job.question->screw.hex && !body.reach;
}

bool wrong_kind(const Job& job, const Triple& triple) {
    return !job.question->screw.hex && !sinks_heads(triple.body->kind);
}

} // namespace

// A counterbore whose reach nobody recorded is taken to reach its own cutting diameter (common
// practice); other tools are not.
bool assumes_reach(const Job& job, const trade::BodyFacts& body) {
    return !job.question->screw.hex && !body.reach && body.cut_dia &&
           body.kind == BodyKind::counterbore;
}

Finding judge_depth(const Job& job, const Triple& triple) {
    Finding finding{Rule::depth, Verdict::unknown, {}, false};
    const auto reach = reach_of(job, *triple.body);
    if (cleans_up(job, *triple.body)) {
        finding.verdict = Verdict::pass;
    } else if (wrong_kind(job, triple)) {
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
    explanation.have = cleans_up(job, body) ? "reach not recorded; a spotface only cleans up"
                                            : "reach " + say(reach_of(job, body), unit);
    if (assumes_reach(job, body))
        explanation.have += ", not recorded: taken as the cutting diameter";
    return explanation;
}

} // namespace match
