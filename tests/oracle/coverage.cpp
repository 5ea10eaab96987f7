// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Counting what came up.
#include "oracle/coverage.hpp"

#include <fmt/format.h>

#include "oracle/describe.hpp"

namespace oracle {

void Coverage::add(const OracleReport& report) {
    not_listed_ += static_cast<std::int64_t>(report.not_listed.size());
    for (const auto& [what, count] : report.met) {
        met_[what] += count;
    }
    for (const OracleAnswer& answer : report.answers) {
        ++answers_[static_cast<std::size_t>(answer.kind)];
        if (answer.size) {
            ++sizes_[static_cast<std::size_t>(*answer.size)];
        }
        for (const RuleVerdict& rule : answer.rules) {
            ++verdicts_[rule.rule][static_cast<std::size_t>(rule.verdict)];
        }
    }
}

std::int64_t Coverage::answers(match::AnswerKind kind) const {
    return answers_[static_cast<std::size_t>(kind)];
}

std::int64_t Coverage::verdicts(const std::string& rule, match::Verdict verdict) const {
    const auto found = verdicts_.find(rule);
    return found == verdicts_.end() ? 0 : found->second[static_cast<std::size_t>(verdict)];
}

std::int64_t Coverage::sizes(match::SizeClass size) const {
    return sizes_[static_cast<std::size_t>(size)];
}

std::int64_t Coverage::met(const std::string& what) const {
    const auto found = met_.find(what);
    return found == met_.end() ? 0 : found->second;
}

std::string Coverage::table() const {
    std::string text;
    for (std::size_t i = 0; i < answers_.size(); ++i) {
        text += fmt::format("{:<30} {:>7}\n", word(static_cast<match::AnswerKind>(i)), answers_[i]);
    }
    text += fmt::format("{:<30} {:>7}\n", "not listed", not_listed_);
    for (std::size_t i = 0; i < sizes_.size(); ++i) {
        text += fmt::format("{:<30} {:>7}\n", word(static_cast<match::SizeClass>(i)), sizes_[i]);
    }
    text += fmt::format("{:<30} {:>7} {:>7} {:>7}\n", "rule", "pass", "fail", "unknown");
    for (const auto& [rule, count] : verdicts_) {
        text += fmt::format("{:<30} {:>7} {:>7} {:>7}\n", rule, count[0], count[1], count[2]);
    }
    for (const auto& [what, count] : met_) {
        text += fmt::format("{:<46} {:>7}\n", what, count);
    }
    return text;
}

} // namespace oracle
