// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/sheet_words.hpp"

#include <fmt/format.h>

namespace present {

using match::AnswerKind;

std::string sheet_title(const job::Sheet& sheet) {
    const auto& job = sheet.particulars;
    std::string title = job.part.empty() ? "" : job.part + ": ";
    title += fmt::format("{} {}", job.count, job.count == 1 ? "hole" : "holes");
    return job.material ? title + " in " + job.material->name : title;
}

std::string sheet_state(const job::Sheet& sheet) {
    if (!sheet.answer)
        return "No counterbore on hand will do";
    const auto& answer = *sheet.answer;
    if (answer.kind == AnswerKind::ready)
        return "Ready";
    if (answer.kind == AnswerKind::after_work)
        return fmt::format("After work: {}", fmt::join(answer.work, "; "));
    return "Not ready, measure first: " + match::next_step(answer);
}

} // namespace present
