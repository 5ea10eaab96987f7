// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The fold: every rule that applies to a triple, and the answer that they make together.
#pragma once

#include <array>
#include <optional>

#include "match/finding.hpp"
#include "match/triple.hpp"

namespace match {

// What the findings of a triple come to together.
struct Weighed {
    std::optional<AnswerKind> kind; // absent: not to be listed
    Shortfall shortfall;            // of the one failure of a `closest`
    bool unknown = false;           // a finding is; not complete where nothing is listed
    bool work = false;              // something is to be done before use; as `unknown`
};

// Adds findings up.
class Scale {
  public:
    // Both must outlive this.
    Scale(const Job& job, const Triple& triple);

    void add(const Finding& finding);
    // Two failures: nothing can make it listed.
    [[nodiscard]] bool hopeless() const { return failures_ > 1; }
    [[nodiscard]] Weighed weighed() const;

  private:
    [[nodiscard]] std::optional<AnswerKind> kind() const;

    const Job& job_;
    const Triple& triple_;
    Weighed weighed_;
    int failures_ = 0;
    bool forbids_ = false; // an unknown that leaves no answer but measure first
};

struct Judged {
    Triple triple;
    std::array<Finding, k_rules> findings{};
    std::size_t count = 0; // of findings
    Weighed weighed;
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
[[nodiscard]] Weighed weigh(const Job& job, const Triple& triple);

// The same with every finding.
[[nodiscard]] Judged judge(const Job& job, const Triple& triple);

// What is to be done before use, in words; empty exactly when there is none.
[[nodiscard]] std::vector<std::string> work_of(const Job& job, const Judged& judged,
                                               const Records& records);

// The rules that apply, with their reasons.
[[nodiscard]] std::vector<Reason> reasons_of(const Job& job, const Judged& judged,
                                             const Records& records, length::Unit unit);

} // namespace match
