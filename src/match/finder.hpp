// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a body comes to, with its own pilot or among all that come into question: first the kind of
// its answer, which is enough to count it; the best pilot and hole only of those that may be shown.
// As best_of over every pilot, without trying each.
#pragma once

#include <optional>
#include <unordered_map>

#include "match/alike.hpp"
#include "match/best.hpp"
#include "match/kept_runners.hpp"
#include "match/trials.hpp"

namespace match {

struct Outcome {
    enum class By { runner, itself, misfit }; // without a pilot, or closest with any: itself
    By by;
    OrderKey least; // what its key can be at the least, but for size, condition and number

    [[nodiscard]] AnswerKind kind() const { return least.kind; }
};

class Finder {
  public:
    // All must outlive this.
    Finder(const Job& job, const Windows& windows, KeptRunners& kept);

    // Absent: the body is not listed.
    [[nodiscard]] std::optional<Outcome> outcome_of(const trade::BodyFacts& body) const;

    // The best triple of a body that has this outcome; may be absent where it would not come before
    // `bound`.
    [[nodiscard]] std::optional<Ranked>
    best_of(const trade::BodyFacts& body, const Outcome& outcome, const OrderKey* bound) const;

    // How many pilots make the body ready, after work or measure first.
    [[nodiscard]] int pilots_that_do(const trade::BodyFacts& body) const;

  private:
    [[nodiscard]] bool clears_with_any(const trade::BodyFacts& body) const;
    [[nodiscard]] bool is_misfit(const trade::BodyFacts& body) const;
    [[nodiscard]] std::optional<Outcome> judged_without_hole(const trade::BodyFacts& body) const;
    [[nodiscard]] std::optional<Outcome> judged(const trade::BodyFacts& body) const;
    [[nodiscard]] std::optional<AnswerKind> with_a_runner(const trade::BodyFacts& body,
                                                          AnswerKind at_best) const;
    [[nodiscard]] std::optional<AnswerKind> by_teeth(const trade::BodyFacts& body) const;
    [[nodiscard]] bool a_misfit_comes_near(const trade::BodyFacts& body) const;
    [[nodiscard]] std::optional<Ranked>
    best_closest(const trade::BodyFacts& body, const Shortfall& least, const OrderKey* bound) const;
    [[nodiscard]] bool comes_near_with_a_pilot(const trade::BodyFacts& body) const;
    [[nodiscard]] const Runners* misfits_for(const trade::BodyFacts& body) const;
    [[nodiscard]] const Runners* misfits() const;

    const Job& job_;
    const Trials& trials_;
    const Windows& windows_;
    KeptRunners& kept_;
    trade::Detail detail_;
    std::shared_ptr<const Runners> running_;
    const Runners& runners_;
    length::Length widest_surely_; // of the holes, at least so wide and at most so wide
    length::Length widest_perhaps_;
    mutable std::shared_ptr<const Runners> misfits_; // when first wanted
    // Of alike bodies; whether misfits come near by their cutters as they are.
    mutable std::unordered_map<trade::BodyFacts, std::optional<Outcome>, AlikeHash> known_;
    mutable std::unordered_map<trade::BodyFacts, bool, AlikeHash> near_;
};

// Lengths of pilots and shanks of bodies matter only where the part or the machine is named.
[[nodiscard]] trade::Detail detail_for(const Question& question);

} // namespace match
