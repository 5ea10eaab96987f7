// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a body that may take a pilot comes to, among all the pilots that can run: first the kind of
// its answer, which is enough to count it; the best pilot only of those that may be shown. As
// best_of over every pilot, without trying each.
#pragma once

#include <optional>
#include <vector>

#include "match/best.hpp"
#include "match/runners.hpp"
#include "match/trials.hpp"

namespace match {

struct Outcome {
    AnswerKind kind;
    bool by_pilot; // by one that can run; else without one, or closest
};

class Finder {
  public:
    // All must outlive this.
    Finder(const Job& job, const trade::Rack& rack, const Trials& trials);

    // Absent: the body is not listed.
    [[nodiscard]] std::optional<Outcome> outcome_of(const trade::BodyFacts& body) const;

    // The best triple of a body that comes to this; may be absent where it would not come before
    // `bound`.
    [[nodiscard]] std::optional<Ranked>
    best_of(const trade::BodyFacts& body, const Outcome& outcome, const OrderKey* bound) const;

    // How many pilots make the body ready, after work or measure first.
    [[nodiscard]] int pilots_that_do(const trade::BodyFacts& body) const;

  private:
    class Search;

    [[nodiscard]] std::optional<AnswerKind> with_a_runner(const trade::BodyFacts& body,
                                                          AnswerKind at_best) const;
    [[nodiscard]] std::optional<Ranked> best_runner(const trade::BodyFacts& body, AnswerKind kind,
                                                    const OrderKey* bound) const;
    [[nodiscard]] std::optional<Ranked> best_closest(const trade::BodyFacts& body) const;
    [[nodiscard]] const std::vector<trade::PilotFacts>& near_pilots() const;

    const Job& job_;
    const trade::Rack& rack_;
    const Trials& trials_;
    Windows windows_;
    trade::Detail detail_;
    Runners runners_;
    mutable std::optional<std::vector<trade::PilotFacts>> near_; // read when first wanted
};

// Lengths of pilots and shanks of bodies matter only where the part or the machine is named.
[[nodiscard]] trade::Detail detail_for(const Question& question);

} // namespace match
