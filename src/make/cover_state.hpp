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

    void take(int option); // and leave out those that need the same resource
    void leave_out(int option) { free_[option] = 0; }
    void drop(int element);

    [[nodiscard]] bool is_free(int option) const { return free_[option] != 0; }
    [[nodiscard]] int had(int element) const { return had_[element]; }
    [[nodiscard]] const std::vector<int>& taken() const { return taken_; } // in order of taking
    [[nodiscard]] int dropped() const { return dropped_; }
    [[nodiscard]] std::int64_t total_rank() const;
    [[nodiscard]] bool covers_an_open(int option) const;
    [[nodiscard]] std::vector<int> open() const; // elements, ascending

    // What covering each element is thought to be worth, in k_cover_unit: any values give a valid
    // bound, good values a high one.
    std::vector<std::int64_t> prices;

  private:
    const CoverProblem* problem_;
    std::vector<char> free_;
    std::vector<int> had_;
    std::vector<int> taken_;
    int dropped_ = 0;
};

} // namespace make
