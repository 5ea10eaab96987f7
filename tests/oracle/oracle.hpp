// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A second, slow and obvious matcher, written from the fit rules alone. It shares the types of a
// question with src/match and nothing else: every body, pilot and drill is listed, every rule is
// asked in full, and the best is chosen by comparing in plain words. Where the two matchers
// differ, one of them has misread the rules.
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "match/answer.hpp"
#include "match/question.hpp"
#include "trade/body.hpp"
#include "trade/pilot.hpp"

namespace oracle {

struct RuleVerdict {
    std::string rule;
    match::Verdict verdict = match::Verdict::pass;

    bool operator==(const RuleVerdict&) const = default;
};

struct OracleAnswer {
    match::AnswerKind kind = match::AnswerKind::ready;
    std::int64_t body = 0;
    std::optional<std::int64_t> pilot;
    int other_pilots = 0;
    std::optional<std::string> drill; // its name
    std::optional<match::SizeClass> size;
    std::vector<RuleVerdict> rules;

    bool operator==(const OracleAnswer&) const = default;
};

struct OracleReport {
    std::vector<OracleAnswer> answers; // in order, every one of them
    std::array<std::int64_t, match::k_answer_kinds> counts{};
    std::map<std::string, std::int64_t> met; // what came up, of k_situations
    std::vector<std::int64_t> not_listed;    // bodies of the set without any answer
};

// One answer a body, or every body and pilot together an answer of its own.
enum class Form { bodies, pairs };

[[nodiscard]] OracleReport judge(const match::Question& question, const match::Shop& shop,
                                 const std::vector<trade::Body>& bodies,
                                 const std::vector<trade::Pilot>& pilots,
                                 const std::vector<trade::Trial>& trials, Form form = Form::bodies);

} // namespace oracle
