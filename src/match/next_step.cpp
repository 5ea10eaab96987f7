// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What would make an answer ready, in one sentence.
#include "match/answer.hpp"
#include "match/finding.hpp"

namespace match {

namespace {

const Reason* first_with(const Answer& answer, Verdict verdict) {
    for (const auto& reason : answer.rules)
        if (reason.result == verdict)
            return &reason;
    return nullptr;
}

std::string joined(const std::vector<std::string>& parts) {
    std::string text;
    for (const auto& part : parts)
        text += (text.empty() ? "" : "; ") + part;
    return text;
}

// What would settle a rule that is open.
std::string settling_step(const Answer& answer, const std::string& rule) {
    const auto body = std::to_string(answer.body);
    const auto pilot = answer.pilot ? "pilot " + std::to_string(*answer.pilot) : "its pilot";
    if (rule == to_text(Rule::head))
        return answer.counterbore ? "measure the head of your screw, or the cutter"
                                  : "measure the cutter of " + body;
    if (rule == to_text(Rule::running))
        return "measure " + pilot;
    if (rule == to_text(Rule::drill))
        return "measure the hole, or the screw";
    if (rule == to_text(Rule::slip) || rule == to_text(Rule::flat))
        return "try " + pilot + " in body " + body;
    if (rule == to_text(Rule::teeth))
        return "measure the bore of " + body;
    if (rule == to_text(Rule::depth))
        return "measure how deep " + body + " can cut";
    if (rule == to_text(Rule::guidance))
        return "measure the length of " + pilot;
    return "measure the shank of " + body;
}

std::string because(const Reason* reason) {
    return reason ? reason->rule + ": " + reason->need + "; here " + reason->have : std::string();
}

} // namespace

std::string next_step(const Answer& answer) {
    switch (answer.kind) {
    case AnswerKind::ready:
        return "ready";
    case AnswerKind::after_work:
        return joined(answer.work);
    case AnswerKind::measure_first:
        if (const auto* open = first_with(answer, Verdict::unknown))
            return settling_step(answer, open->rule) + " (" + because(open) + ")";
        return {};
    case AnswerKind::make_pilot:
        return "make a pilot to fit body " + std::to_string(answer.body);
    case AnswerKind::closest:
        return because(first_with(answer, Verdict::fail));
    }
    return {};
}

} // namespace match
