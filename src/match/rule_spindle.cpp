// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <charconv>

#include "match/rules.hpp"
#include "match/say.hpp"
#include "trade/text.hpp"

namespace match {

namespace {

// The Morse taper of a shank recorded as `Morse 2` or `MT2`.
std::optional<int> morse_of(const std::string& shank_kind) {
    const auto text = trade::folded(shank_kind);
    for (const std::string_view start : {"morse taper ", "morse ", "mt ", "mt"}) {
        if (text.compare(0, start.size(), start) != 0)
            continue;
        int taper = 0;
        const char* first = text.data() + start.size();
        const auto end = std::from_chars(first, text.data() + text.size(), taper);
        if (end.ec == std::errc() && end.ptr == text.data() + text.size())
            return taper;
    }
    return std::nullopt;
}

bool is_straight(const std::string& shank_kind) {
    return shank_kind.empty() || trade::folded(shank_kind) == "straight";
}

} // namespace

Finding judge_spindle(const Job& job, const Triple& triple) {
    Finding finding{Rule::spindle, Verdict::unknown, {}, false};
    const auto& machine = *job.question->machine;
    const auto& body = *triple.body;
    if (is_straight(body.shank_kind)) {
        if (machine.chuck && body.shank_dia)
            finding.verdict = within(body.shank_dia->range, machine.chuck->lo, machine.chuck->hi);
    } else if (const auto morse = morse_of(body.shank_kind); morse && machine.morse) {
        finding.verdict = *morse == *machine.morse ? Verdict::pass : Verdict::fail;
    }
    return finding;
}

Explanation explain_spindle(const Job& job, const Triple& triple, length::Unit unit) {
    const auto& machine = *job.question->machine;
    const auto& body = *triple.body;
    std::string need = machine.name + ":";
    if (machine.chuck)
        need += " chuck " + say(*machine.chuck, unit);
    if (machine.chuck && machine.morse)
        need += ",";
    if (machine.morse)
        need += " Morse " + std::to_string(*machine.morse);
    if (!is_straight(body.shank_kind))
        return {need, "shank " + body.shank_kind};
    return {need, "straight shank " + say(trade::range_of(body.shank_dia), unit)};
}

} // namespace match
