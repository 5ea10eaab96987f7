// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/match_csv.hpp"

#include <fmt/format.h>

#include "length/print.hpp"
#include "present/csv.hpp"

namespace present {

namespace {

std::string in_unit(const length::MaybeRange& range, length::Unit unit) {
    return range ? length::to_text(*range, unit) : std::string();
}

// Each rule that does not pass, with its result.
std::string standing(const match::Answer& answer) {
    std::string text;
    for (const auto& reason : answer.rules)
        if (reason.result != match::Verdict::pass)
            text += fmt::format("{}{}: {}", text.empty() ? "" : "; ", reason.rule,
                                match::to_text(reason.result));
    return text;
}

std::vector<std::string> row_of(const match::Answer& answer, length::Unit unit) {
    return {std::string(match::to_text(answer.kind)),
            std::to_string(answer.body),
            answer.pilot ? std::to_string(*answer.pilot) : std::string(),
            std::to_string(answer.other_pilots),
            answer.drill ? answer.drill->name : std::string(),
            in_unit(answer.hole, unit),
            in_unit(answer.counterbore, unit),
            answer.size ? std::string(match::to_text(*answer.size)) : std::string(),
            in_unit(answer.running_clearance, unit),
            answer.depth ? length::to_text(*answer.depth, unit) : std::string(),
            standing(answer),
            fmt::format("{}", fmt::join(answer.work, "; ")),
            answer.place};
}

} // namespace

std::string match_csv(const match::Report& report, length::Unit unit) {
    std::string text =
        csv_row({"answer", "body", "pilot", "other_pilots", "drill", "hole", "counterbore", "size",
                 "running_clearance", "depth", "not_passed", "work", "place"});
    for (const auto& answer : report.answers)
        text += csv_row(row_of(answer, unit));
    return text;
}

} // namespace present
