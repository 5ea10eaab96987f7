// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The least list is found from its front: an option below the one that the best cover so far has
// at that place is tried by looking for any cover as good with it, and is left out for good if
// there is none. Each cover found lowers the list, so few places need a search that fails.

#include "make/cover_ties.hpp"

#include <algorithm>
#include <utility>

#include "make/cover_greedy.hpp"
#include "make/cover_part.hpp"

namespace make {

namespace {

constexpr int k_first_rounds = 300;
constexpr int k_later_rounds = 30;
// Effort for a plain search before the rest is reduced again.
constexpr std::int64_t k_quick_trial = 200;

} // namespace

CoverState priced_by(const CoverProblem& problem, const CoverOptions& taken) {
    CoverState cover(problem);
    for (const std::size_t option : taken)
        cover.take(option);
    CoverState state(problem);
    for (std::size_t e = 0; e < problem.elements.size(); ++e)
        state.prices[e] = std::max(cover.had(e), 0) * k_cover_unit;
    return state;
}

namespace {

// What is left of the problem after what the state has taken and left out.
CoverProblem left_of(CoverProblem problem, const CoverState& state) {
    std::vector<bool> free;
    for (std::size_t e = 0; e < problem.elements.size(); ++e)
        problem.elements[e].had = state.had(e);
    for (std::size_t o = 0; o < problem.options.size(); ++o)
        free.push_back(state.is_free(o));
    return part_of(problem, std::vector<bool>(problem.elements.size(), true), free);
}

class TieBreak {
  public:
    TieBreak(const CoverProblem& problem, int drops, CoverOptions best, CoverEffort& effort)
        : problem_(&problem), goal_{CoverAim::rank, drops, static_cast<int>(best.size())},
          best_(std::move(best)), total_(value_of(problem, CoverAim::rank, best_)),
          search_(problem, goal_, total_ + 1, trial_), effort_(&effort) {
        std::sort(best_.begin(), best_.end());
    }

    CoverOptions run() {
        auto state = priced_by(*problem_, best_);
        tighten(state, k_first_rounds);
        std::size_t option = 0;
        for (std::size_t place = 0; place < best_.size() && effort_->left > 0; ++place) {
            for (; option < best_[place] && effort_->left > 0; ++option)
                if (state.is_free(option) && !try_with(state, option))
                    state.leave_out(option);
            // What must be taken may be taken already.
            if (state.is_free(best_[place]))
                state.take(best_[place]);
            option = best_[place] + 1;
            tighten(state, k_later_rounds);
        }
        return best_;
    }

  private:
    void tighten(CoverState& state, int rounds) {
        trial_.left = 0;
        search_.tighten(state, rounds);
        effort_->left += trial_.left;
    }

    // Whether a cover as good takes the option besides what the state has taken; if so it becomes
    // the best. Without effort left it may be overlooked.
    bool try_with(CoverState state, std::size_t option) {
        // Each option of a best cover earns its place.
        if (!state.covers_an_open(option))
            return false;
        state.take(option);
        auto found = search(state, k_quick_trial);
        if (!found && !search_.proven())
            found = goal_.drops > 0 ? search(state, effort_->left) : finish(state);
        if (found)
            std::sort(best_.begin(), best_.end());
        return found;
    }

    bool search(const CoverState& state, std::int64_t effort) {
        const auto most = std::min(effort, effort_->left);
        trial_.left = most;
        const bool found = search_.find_any(state);
        effort_->left -= most - trial_.left;
        if (found)
            best_ = *search_.best();
        return found;
    }

    // The rest is reduced again and solved by itself: often it falls into small parts, where a
    // search for any cover has much to look at.
    bool finish(const CoverState& state) {
        CoverPart rest(left_of(*problem_, state));
        effort_->left -= static_cast<std::int64_t>(rest.size() / 4);
        if (!rest.take_fewest(*effort_) ||
            state.taken().size() + rest.chosen().size() > best_.size())
            return false;
        rest.rank_best(*effort_);
        auto cover = options_with(*problem_, rest.chosen());
        cover.insert(cover.end(), state.taken().begin(), state.taken().end());
        if (value_of(*problem_, CoverAim::rank, cover) > total_)
            return false;
        best_ = std::move(cover);
        return true;
    }

    const CoverProblem* problem_;
    CoverGoal goal_;
    CoverOptions best_;
    int total_;
    CoverEffort trial_;
    CoverSearch search_;
    CoverEffort* effort_;
};

} // namespace

CoverOptions first_of_best(const CoverProblem& problem, int drops, CoverOptions best,
                           CoverEffort& effort) {
    return TieBreak(problem, drops, std::move(best), effort).run();
}

} // namespace make
