// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

// A chosen drill is relied on for no more than its own size; a hole that is given can be measured.
length::Range hole_for_teeth(const Job& job, const CandidateHole& hole) {
    return job.question->hole.kind == HoleKind::chosen ? hole.size : hole.hole;
}

Finding judge_teeth(const Job& job, const Triple& triple) {
    Finding finding{Rule::teeth, Verdict::unknown, {}, false};
    if (!triple.body->bore)
        return finding;
    const length::Range bore = *triple.body->bore;
    const auto hole = hole_for_teeth(job, *triple.hole);
    finding.verdict = at_least(hole - bore, length::Length());
    if (finding.verdict == Verdict::fail)
        finding.shortfall = {(bore.lo - hole.hi).nm(), bore.lo.nm()};
    return finding;
}

Explanation explain_teeth(const Job& job, const Triple& triple, const Records&, length::Unit unit) {
    return {"bore no larger than the hole, " + say(hole_for_teeth(job, *triple.hole), unit) +
                ", or the teeth leave a ring standing",
            "bore " + say(triple.body->bore, unit)};
}

} // namespace match
