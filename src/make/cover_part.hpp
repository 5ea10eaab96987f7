// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One part of a cover problem that shares nothing with the others, solved in four passes: most
// covered, fewest options, least total of ranks, and last the tie-break. The first three leave out
// what cannot change the value of the best cover, even if that loses the cover which the tie-break
// prefers; the last works on all options again and finds that cover, knowing its value.
#pragma once

#include "make/cover_search.hpp"

namespace make {

class CoverPart {
  public:
    // A problem reduced with Dominance::lower_index.
    explicit CoverPart(CoverProblem problem);

    // In this order, each once. A pass whose effort runs out keeps the best found.
    void cover_most(CoverEffort& effort);
    bool take_fewest(CoverEffort& effort); // false: no cover of all was found
    void rank_best(CoverEffort& effort);
    void break_ties(CoverEffort& effort);

    [[nodiscard]] const std::vector<int>& chosen() const { return chosen_; } // caller's indexes
    [[nodiscard]] int bound() const { return bound_; }                       // on the count
    [[nodiscard]] bool coverage_proven() const { return coverage_proven_; }
    [[nodiscard]] bool proven() const;
    [[nodiscard]] std::size_t size() const { return problem_.options.size(); }

  private:
    // A piece of the part that stands by itself once what is forced is taken.
    struct Block {
        CoverProblem problem;
        CoverOptions taken; // options of the problem
        bool count_proven = true;
        bool rank_proven = true;
    };

    [[nodiscard]] bool count_block(Block& block, CoverEffort& effort);
    void gather();

    CoverProblem problem_;
    int drops_ = 0;
    std::vector<int> forced_; // the caller's indexes
    std::vector<Block> blocks_;
    std::vector<int> chosen_;
    int bound_ = 0;
    bool coverage_proven_ = true;
};

} // namespace make
