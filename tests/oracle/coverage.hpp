// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// How often each answer and each verdict of each rule came up: a comparison that never meets a
// failing rule proves nothing about it.
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <string>

#include "oracle/oracle.hpp"

namespace oracle {

class Coverage {
  public:
    void add(const OracleReport& report);

    [[nodiscard]] std::int64_t answers(match::AnswerKind kind) const;
    [[nodiscard]] std::int64_t not_listed() const { return not_listed_; }
    [[nodiscard]] std::int64_t verdicts(const std::string& rule, match::Verdict verdict) const;
    [[nodiscard]] std::int64_t met(const std::string& what) const;
    [[nodiscard]] std::int64_t sizes(match::SizeClass size) const;

    // One line an answer, one a rule.
    [[nodiscard]] std::string table() const;

  private:
    std::array<std::int64_t, match::k_answer_kinds> answers_{};
    std::map<std::string, std::array<std::int64_t, 3>> verdicts_;
    std::array<std::int64_t, 4> sizes_{};
    std::map<std::string, std::int64_t> met_;
    std::int64_t not_listed_ = 0;
};

} // namespace oracle
