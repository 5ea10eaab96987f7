// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One body that may take a pilot, with what was tried in it, put to runners.
#pragma once

#include <optional>
#include <span>

#include "match/best.hpp"
#include "match/runners.hpp"

namespace match {

class Pairing {
  public:
    // All must outlive this.
    Pairing(const Job& job, const Trials& trials, const Runners& runners,
            const trade::BodyFacts& body)
        : job_(job), runners_(runners), body_(body), tried_(trials.in_body(body.number)),
          made_(made_by_body(job, body)) {}

    // Some pilot was tried or found in it.
    [[nodiscard]] bool has_own() const;
    // Shows the pilots tried in it and found in it.
    template <typename See>
    void each_own(const See& see) const {
        for (const auto& trial : tried_)
            runners_.each_of(trial.pilot, see);
        runners_.each_in_body(body_.number, see);
    }

    [[nodiscard]] bool is_tried(const Runner& runner) const {
        return how_tried(tried_, runners_.pilot(runner).number).has_value();
    }
    [[nodiscard]] std::optional<AnswerKind> kind_with(const Runner& runner) const;
    // Ready, after work or measure first.
    [[nodiscard]] bool would_do(const Runner& runner) const;

    // The least kind from `at_best` to measure first that a runner gives, those of its own aside.
    [[nodiscard]] std::optional<AnswerKind> least_kind(AnswerKind at_best) const;
    // Whether any comes to `kind`.
    [[nodiscard]] bool any(AnswerKind kind) const;
    // The best that comes to `kind`; may be absent where it would not come before `bound`. A
    // closest falls short by `least` or more.
    [[nodiscard]] std::optional<Ranked> best(AnswerKind kind, const Shortfall& least,
                                             const OrderKey* bound) const;

  private:
    [[nodiscard]] Triple with(const Runner& runner) const;
    // What comes after this rank does not come before `bound`.
    [[nodiscard]] Rank most_rank(AnswerKind kind, const Shortfall& least,
                                 const OrderKey* bound) const;
    void keep_better(const Runner& runner, AnswerKind kind, std::optional<Ranked>& best) const;

    const Job& job_;
    const Runners& runners_;
    const trade::BodyFacts& body_;
    std::span<const trade::Trial> tried_;
    Made made_;
};

} // namespace match
