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

// Where the pilot is cannot be fetched from.
bool home_is_gone(const Triple& triple) {
    return triple.pilot_is_in_another() && triple.pilot->home_gone;
}

std::string why_not(const Triple& triple, const Records& records) {
    auto why = absence("body", *records.body);
    if (why.empty() && records.pilot)
        why = absence("pilot", *records.pilot);
    if (why.empty() && home_is_gone(triple))
        why = "pilot " + std::to_string(triple.pilot->number) + " is in " +
              absence("body", *records.home);
    return why;
}

} // namespace

// What is not there is farther off than any tool that is.
Finding judge_in_hand(const Job& job, const Triple& triple) {
    const bool fails = is_out_of_use(*triple.body) ||
                       (triple.pilot && is_out_of_use(*triple.pilot)) || home_is_gone(triple);
    if (!fails)
        return {Rule::in_hand, Verdict::pass, {}, false};
    return {Rule::in_hand, Verdict::fail, {job.shop->practice.closest_share, 1000}, false};
}

Explanation explain_in_hand(const Job&, const Triple& triple, const Records& records,
                            length::Unit) {
    const auto why = why_not(triple, records);
    return {"in the shop and whole", why.empty() ? "in hand" : why};
}

} // namespace match
