// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/cover_part.hpp"

#include <algorithm>
#include <utility>

#include "make/cover_greedy.hpp"
#include "make/cover_reduce.hpp"
#include "make/cover_ties.hpp"

namespace make {

namespace {

void add_indexes(const CoverProblem& problem, const CoverOptions& options,
                 std::vector<int>& indexes) {
    for (const std::size_t option : options)
        indexes.push_back(problem.options[option].index);
}

} // namespace

CoverPart::CoverPart(CoverProblem problem) : problem_(std::move(problem)) {}

bool CoverPart::proven() const {
    return coverage_proven_ && std::all_of(blocks_.begin(), blocks_.end(), [](const auto& block) {
               return block.count_proven && block.rank_proven;
           });
}

void CoverPart::cover_most(CoverEffort& effort) {
    const auto reduced = reduce(droppable_part(problem_), Dominance::any);
    std::vector<int> indexes = reduced.taken;
    const CoverGoal goal{CoverAim::coverage, 0, 0};
    for (const auto& part : split(reduced.problem)) {
        CoverSearch search(part, goal, static_cast<int>(part.elements.size()) + 1, effort);
        search.start_with(*cover_greedily(part, goal, CoverState(part)));
        search.run(CoverState(part));
        drops_ += search.upper();
        coverage_proven_ = coverage_proven_ && search.proven();
        add_indexes(part, *search.best(), indexes);
    }
    if (drops_ == 0)
        problem_ = all_needed(std::move(problem_));
    CoverState state(problem_);
    for (const std::size_t option : options_with(problem_, indexes))
        state.take(option);
    const auto cover = cover_greedily(problem_, {CoverAim::count, drops_, 0}, std::move(state));
    add_indexes(problem_, *cover, chosen_);
}

// Counts the block's pieces one by one; whether it found a cover of each.
bool CoverPart::count_block(Block& block, CoverEffort& effort) {
    Reduced reduced{without_ranks(block.problem), {}};
    std::vector<CoverProblem> pieces{reduced.problem};
    // Drops are shared between the pieces, so with drops there is but one.
    if (drops_ == 0) {
        reduced = reduce(reduced.problem, Dominance::any);
        pieces = split(reduced.problem);
    }
    std::vector<int> indexes = reduced.taken;
    bound_ += static_cast<int>(indexes.size());
    bool found = true;
    for (const auto& piece : pieces) {
        const CoverGoal goal{CoverAim::count, drops_, 0};
        CoverSearch search(piece, goal, static_cast<int>(piece.options.size()) + 1, effort);
        if (drops_ > 0)
            search.start_with(options_with(piece, chosen_));
        else if (auto cover = cover_greedily(piece, goal, CoverState(piece)))
            search.start_with(std::move(*cover));
        search.run(CoverState(piece));
        block.count_proven = block.count_proven && search.proven();
        bound_ += search.bound();
        found = found && search.best();
        if (search.best())
            add_indexes(piece, *search.best(), indexes);
    }
    block.taken = options_with(block.problem, indexes);
    return found;
}

bool CoverPart::take_fewest(CoverEffort& effort) {
    std::vector<CoverProblem> problems{problem_};
    if (drops_ == 0) {
        auto reduced = reduce(problem_, Dominance::any);
        forced_ = std::move(reduced.taken);
        problems = split(reduced.problem);
    }
    bound_ = static_cast<int>(forced_.size());
    bool found = true;
    for (auto& problem : problems) {
        blocks_.push_back({std::move(problem), {}, true, true});
        found = count_block(blocks_.back(), effort) && found;
    }
    if (!found) {
        // The cover that covers most stands; what was found of the blocks is not enough.
        forced_.clear();
        blocks_ = {{problem_, options_with(problem_, chosen_), false, false}};
    }
    gather();
    return found;
}

void CoverPart::rank_best(CoverEffort& effort) {
    for (auto& block : blocks_) {
        block.taken = swapped_for_rank(block.problem, std::move(block.taken));
        block.rank_proven = block.count_proven;
        if (!block.count_proven)
            continue;
        const CoverGoal goal{CoverAim::rank, drops_, static_cast<int>(block.taken.size())};
        CoverSearch search(block.problem, goal, 0, effort);
        search.start_with(block.taken);
        search.run(priced_by(block.problem, block.taken));
        block.rank_proven = search.proven();
        block.taken = *search.best();
    }
    gather();
}

void CoverPart::break_ties(CoverEffort& effort) {
    if (!proven())
        return;
    const auto first = first_of_best(problem_, drops_, options_with(problem_, chosen_), effort);
    chosen_.clear();
    add_indexes(problem_, first, chosen_);
}

void CoverPart::gather() {
    chosen_ = forced_;
    for (const auto& block : blocks_)
        add_indexes(block.problem, block.taken, chosen_);
}

} // namespace make
