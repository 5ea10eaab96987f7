// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Where a search stands in a cover problem: what it has taken, left out and given up so far; and
// what it is looking for.
#pragma once

#include <cstdint>
#include <vector>

#include "make/cover_problem.hpp"

namespace make {

enum class CoverAim {
    coverage, // fewest elements dropped
    count,    // fewest options taken, with at most `drops` elements dropped
    rank,     // least total of ranks, with at most `drops` dropped by exactly `count` options
};

struct CoverGoal {
    CoverAim aim = CoverAim::count;
    int drops = 0;
    int count = 0;
};

// What each unit of the aim is worth in the whole-number arithmetic of bounds and prices.
inline constexpr std::int64_t k_cover_unit = 1 << 16;

class CoverState {
  public:
    explicit CoverState(const CoverProblem& problem);

    void take(std::size_t option); // and leave out those that need the same resource
    void leave_out(std::size_t option) { free_[option] = false; }
    void drop(std::size_t element);

    [[nodiscard]] bool is_free(std::size_t option) const { return free_[option]; }
    [[nodiscard]] int had(std::size_t element) const { return had_[element]; }
    [[nodiscard]] const CoverOptions& taken() const { return taken_; } // in order of taking
    [[nodiscard]] int count() const { return static_cast<int>(taken_.size()); }
    [[nodiscard]] int dropped() const { return dropped_; }
    [[nodiscard]] std::int64_t total_rank() const;
    [[nodiscard]] bool covers_an_open(std::size_t option) const;
    [[nodiscard]] std::vector<std::size_t> open() const; // elements, ascending

    // What covering each element is thought to be worth, in k_cover_unit: any values give a valid
    // bound, good values a high one.
    std::vector<std::int64_t> prices;

  private:
    const CoverProblem* problem_;
    std::vector<bool> free_;
    std::vector<int> had_;
    CoverOptions taken_;
    int dropped_ = 0;
};

} // namespace make
