// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"

namespace match {

namespace {

// Why it is not in hand; empty if it is.
template <typename Tool>
std::string absence(const char* what, const Tool& tool) {
    const std::string name = std::string(what) + " " + std::to_string(tool.number);
    if (tool.retired)
        return name + " is retired";
    if (tool.loan)
        return name + " is on loan to " + *tool.loan;
    return tool.condition == trade::Condition::broken ? name + " is broken" : std::string();
}

std::string why_not(const Triple& triple) {
    auto why = absence("body", *triple.body);
    if (why.empty() && triple.pilot)
        why = absence("pilot", *triple.pilot);
    const auto* home = triple.pilots_home;
    if (why.empty() && home && home != triple.body && (home->retired || home->loan))
        why = "pilot " + std::to_string(triple.pilot->number) + " is in " + absence("body", *home);
    return why;
}

template <typename Tool>
bool gone(const Tool& tool) {
    return tool.retired || tool.loan || tool.condition == trade::Condition::broken;
}

} // namespace

Finding judge_in_hand(const Job&, const Triple& triple) {
    const auto* home = triple.pilots_home;
    const bool home_gone = home && home != triple.body && (home->retired || home->loan);
    const bool fails = gone(*triple.body) || (triple.pilot && gone(*triple.pilot)) || home_gone;
    return {Rule::in_hand, fails ? Verdict::fail : Verdict::pass, {}, false};
}

Explanation explain_in_hand(const Job&, const Triple& triple, length::Unit) {
    const auto why = why_not(triple);
    return {"in the shop and whole", why.empty() ? "in hand" : why};
}

} // namespace match
