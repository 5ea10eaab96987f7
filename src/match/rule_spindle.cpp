// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

Finding judge_spindle(const Job& job, const Triple& triple) {
    Finding finding{Rule::spindle, Verdict::unknown, {}, false};
    const auto& machine = *job.question->machine;
    const auto& body = *triple.body;
    if (body.shank.straight()) {
        if (machine.chuck && body.shank_dia)
            finding.verdict = within(*body.shank_dia, machine.chuck->lo, machine.chuck->hi);
    } else if (const auto morse = body.shank.morse(); morse && machine.morse) {
        finding.verdict = *morse == *machine.morse ? Verdict::pass : Verdict::fail;
    }
    return finding;
}

Explanation explain_spindle(const Job& job, const Triple& triple, const Records& records,
                            length::Unit unit) {
    const auto& machine = *job.question->machine;
    const auto& body = *triple.body;
    std::string need = machine.name + ":";
    if (machine.chuck)
        need += " chuck " + say(*machine.chuck, unit);
    if (machine.chuck && machine.morse)
        need += ",";
    if (machine.morse)
        need += " Morse " + std::to_string(*machine.morse);
    if (!body.shank.straight())
        return {need, "shank " + records.body->shank_kind};
    return {need, "straight shank " + say(body.shank_dia, unit)};
}

} // namespace match
