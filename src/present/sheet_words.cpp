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
    if (!job.material)
        return title;
    const auto& material = *job.material;
    return title + " in " +
           (material.asked_as.empty()
                ? material.name
                : fmt::format("{} (taken as {})", material.asked_as, material.name));
}

std::string lines_named(const std::vector<std::size_t>& lines,
                        const std::vector<job::Sheet>& sheets) {
    std::string names;
    for (const auto line : lines) {
        const auto& sheet = sheets[line];
        const auto& part = sheet.particulars.part;
        names +=
            fmt::format("{}{} ({})", names.empty() ? "" : ", ",
                        part.empty() ? sheet.question.screw.name : part, sheet.particulars.count);
    }
    return names;
}

std::string sheet_state(const job::Sheet& sheet) {
    if (!sheet.answer)
        return "No counterbore on hand will do";
    const auto& answer = *sheet.answer;
    if (answer.kind == AnswerKind::ready)
        return "Ready";
    if (answer.kind == AnswerKind::after_work)
        return fmt::format("After work: {}", fmt::join(answer.work, "; "));
    if (answer.kind == AnswerKind::make_pilot)
        return fmt::format("Not ready: make a pilot for body {} first", answer.body);
    return "Not ready: settle first what is said below";
}

} // namespace present
