// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What would make an answer ready, in one sentence.
#include "match/answer.hpp"

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
        return because(first_with(answer, Verdict::unknown));
    case AnswerKind::make_pilot:
        return "make a pilot to fit body " + std::to_string(answer.body);
    case AnswerKind::closest:
        return because(first_with(answer, Verdict::fail));
    }
    return {};
}

} // namespace match
