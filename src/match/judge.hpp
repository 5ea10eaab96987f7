// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The fold: every rule that applies to a triple, and the answer that they make together.
#pragma once

#include <array>
#include <optional>

#include "match/finding.hpp"
#include "match/triple.hpp"

namespace match {

struct Judged {
    Triple triple;
    std::array<Finding, k_rules> findings{};
    std::size_t count = 0;          // of findings
    bool work = false;              // something is to be done before use
    std::optional<AnswerKind> kind; // absent: not to be listed
    Shortfall shortfall;            // of the one failure of a `closest`
};

// A list of work, or a condition that asks for it.
template <typename Facts>
[[nodiscard]] bool needs_work(const Facts& tool) {
    using trade::Condition;
    return tool.work_listed || (tool.condition && *tool.condition >= Condition::dull &&
                                *tool.condition <= Condition::rough);
}

// Any failure: not listed, unless it is the only one and near enough, then closest; else any
// unknown: measure first; else any work: after work; else ready. A body that lacks its pilot and
// fails nothing: make pilot, or measure first where rule 1 or 6 is unknown.
[[nodiscard]] Judged judge(const Job& job, const Triple& triple);

// What is to be done before use, in words; empty exactly when `work` is false.
[[nodiscard]] std::vector<std::string> work_of(const Job& job, const Judged& judged,
                                               const Records& records);

// The rules that apply, with their reasons.
[[nodiscard]] std::vector<Reason> reasons_of(const Job& job, const Judged& judged,
                                             const Records& records, length::Unit unit);

} // namespace match
