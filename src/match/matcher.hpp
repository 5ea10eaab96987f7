// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One rack, for one question after another.
#pragma once

#include <functional>

#include "match/kept_runners.hpp"
#include "match/markings.hpp"
#include "match/search.hpp"

namespace match {

class Matcher {
  public:
    // Both must outlive this. Reasons are in `unit`.
    Matcher(const trade::Rack& rack, const Shop& shop, length::Unit unit);
    Matcher(const Matcher&) = delete; // what it keeps points at its trials
    Matcher& operator=(const Matcher&) = delete;

    // As match().
    [[nodiscard]] Report match(const Question& question, std::size_t most) const;

    // The first answer in order that is wanted, without the others in words.
    [[nodiscard]] std::optional<Answer>
    first_that(const Question& question, const std::function<bool(const Ranked&)>& wanted) const;

  private:
    [[nodiscard]] Findings find(const Job& job, std::size_t most) const;
    [[nodiscard]] Answer answer_of(const Job& job, const Found& found) const;

    const trade::Rack& rack_;
    const Shop& shop_;
    length::Unit unit_;
    Trials trials_;
    Markings markings_;
    mutable KeptRunners kept_;
};

} // namespace match
