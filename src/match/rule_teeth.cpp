// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

Finding judge_teeth(const Job&, const Triple& triple) {
    Finding finding{Rule::teeth, Verdict::unknown, {}, false};
    if (!triple.body->bore)
        return finding;
    const length::Range bore = *triple.body->bore;
    finding.verdict = at_least(triple.hole->hole - bore, length::Length());
    if (finding.verdict == Verdict::fail)
        finding.shortfall = {(bore.lo - triple.hole->hole.hi).nm(), bore.lo.nm()};
    return finding;
}

Explanation explain_teeth(const Job&, const Triple& triple, const Records&, length::Unit unit) {
    return {"bore no larger than the hole, " + say(triple.hole->hole, unit) +
                ", or the teeth leave a ring standing",
            "bore " + say(triple.body->bore, unit)};
}

} // namespace match
