// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Branch and bound over a cover problem: takes in turn each option of the element that has fewest,
// leaves a branch as soon as its bound shows that nothing better is in it.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "make/cover_relaxation.hpp"

namespace make {

// What a search may still spend. A node costs one, and one more for every thousand entries looked
// at while bounding it: so the time is bounded too, yet the same result comes on every machine.
struct CoverEffort {
    std::int64_t left = 0;
};

class CoverSearch {
  public:
    // Looks for covers with a value under `upper`.
    CoverSearch(const CoverProblem& problem, const CoverGoal& goal, int upper, CoverEffort& effort);

    // A cover with a value under `upper`, to begin with.
    void start_with(CoverOptions taken);

    // The best cover, with its proof unless the effort runs out.
    void run(CoverState state);

    // Whether there is any; stops at the first found.
    bool find_any(CoverState state);

    // Takes what must be, leaves out what no cover under `upper` has, betters the prices. Whether
    // there may be any cover.
    bool tighten(CoverState& state, int rounds);

    [[nodiscard]] bool proven() const { return !stopped_ || (best_ && root_bound_ >= upper_); }
    [[nodiscard]] int upper() const { return upper_; } // the value of the best, when found
    [[nodiscard]] int bound() const { return proven() ? upper_ : root_bound_; }
    [[nodiscard]] const std::optional<CoverOptions>& best() const { return best_; }

  private:
    enum class Settled { unchanged, changed, hopeless };

    bool open_up(CoverState& state);
    void explore(CoverState state, int rounds);
    void branch(CoverState state, std::int64_t at_least);
    Settled settle(CoverState& state) const;
    std::optional<std::int64_t> price(CoverState& state, int rounds, CoverPace& pace);
    void leave_out_hopeless(CoverState& state);
    void record(const CoverOptions& taken);
    [[nodiscard]] bool may_drop(const CoverState& state, std::size_t element) const;
    [[nodiscard]] int free_options(const CoverState& state, std::size_t element) const;
    [[nodiscard]] std::int64_t enough() const { return (upper_ - 1) * k_cover_unit + 1; }
    [[nodiscard]] bool done() const { return stopped_ || (first_only_ && best_); }

    const CoverProblem* problem_;
    CoverGoal goal_;
    int upper_;
    CoverEffort* effort_;
    CoverRelaxation relaxation_;
    std::optional<CoverOptions> best_;
    int root_bound_ = 0;
    bool first_only_ = false;
    bool stopped_ = false;
};

} // namespace make
