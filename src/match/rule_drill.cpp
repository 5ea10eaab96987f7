// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

Finding judge_drill(const Job& job, const Triple& triple) {
    Finding finding{Rule::drill, Verdict::unknown, {}, false};
    const auto& screw = job.question->screw.screw_dia;
    if (job.question->hole.tapped) {
        finding.verdict = Verdict::pass;
    } else if (screw) {
        const auto& hole = triple.hole->hole;
        finding.verdict = at_least(hole, screw->hi);
        if (finding.verdict == Verdict::fail)
            finding.shortfall = {(screw->hi - hole.hi).nm(), screw->hi.nm()};
    }
    return finding;
}

Explanation explain_drill(const Job& job, const Triple& triple, const Records&, length::Unit unit) {
    const auto& screw = job.question->screw.screw_dia;
    std::string have = "hole " + say(triple.hole->hole, unit);
    if (triple.hole->drill)
        have += " from drill " + triple.hole->drill->name;
    if (triple.hole->reamed)
        have += ", reamed";
    if (job.question->hole.tapped)
        return {"the tapping hole: the screw need not pass", have};
    if (!screw)
        return {"a hole over the screw, whose diameter is not known", have};
    return {"hole over the screw, " + say(screw->hi, unit), have};
}

} // namespace match
