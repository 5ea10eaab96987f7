// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a body that may take a pilot comes to, among all the pilots that come into question: first
// the kind of its answer, which is enough to count it; the best pilot only of those that may be
// shown. As best_of over every pilot, without trying each.
#pragma once

#include <optional>
#include <unordered_map>

#include "match/best.hpp"
#include "match/runners.hpp"
#include "match/trials.hpp"

namespace match {

struct Outcome {
    AnswerKind kind;
    bool by_pilot;   // by one that can run; else without one, or closest
    Shortfall least; // of a closest: it falls short by this or more
};

// What decides, trials aside, how well any pilot will do in a body; many bodies are alike in it.
struct Seating {
    trade::Limits cut_dia; // unknown also where it clears the head with the smallest pilot
    trade::Limits bore;
    trade::Limits bore_depth;
    trade::Limits set_screw;
    trade::Limits set_screw_at;
    std::optional<trade::Retention> retention;
    AnswerKind at_best{}; // by the body alone

    bool operator==(const Seating&) const = default;
};

struct SeatingHash {
    std::size_t operator()(const Seating& seating) const;
};

class Finder {
  public:
    // All must outlive this.
    Finder(const Job& job, const trade::Rack& rack, const Trials& trials, const Windows& windows);

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
    [[nodiscard]] std::optional<AnswerKind>
    with_any_runner(const Search& search, const trade::BodyFacts& body, AnswerKind at_best) const;
    [[nodiscard]] std::optional<AnswerKind> by_teeth(const trade::BodyFacts& body) const;
    [[nodiscard]] bool a_misfit_comes_near(const trade::BodyFacts& body) const;
    [[nodiscard]] std::optional<Ranked> best_closest(const trade::BodyFacts& body,
                                                     const Shortfall& least) const;
    [[nodiscard]] const Runners* misfits() const;

    const Job& job_;
    const trade::Rack& rack_;
    const Trials& trials_;
    const Windows& windows_;
    trade::Detail detail_;
    Runners runners_;
    length::Length widest_surely_; // of the holes, at least so wide and at most so wide
    length::Length widest_perhaps_;
    mutable std::optional<Runners> misfits_; // read when first wanted
    mutable std::unordered_map<Seating, std::optional<AnswerKind>, SeatingHash> known_;
};

// Lengths of pilots and shanks of bodies matter only where the part or the machine is named.
[[nodiscard]] trade::Detail detail_for(const Question& question);

} // namespace match
