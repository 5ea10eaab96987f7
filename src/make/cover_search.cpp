// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/cover_search.hpp"

#include <algorithm>
#include <utility>

#include "make/cover_greedy.hpp"

namespace make {

namespace {

// Rounds of bettering the prices: at the root in bursts, each followed by a try for a cover.
constexpr int k_root_bursts = 30;
constexpr int k_root_rounds = 40;
constexpr int k_node_rounds = 30;
// Rounds without a better bound before the steps get smaller: few in a node, which begins with its
// parent's prices.
constexpr int k_root_patience = 20;
constexpr int k_node_patience = 6;

} // namespace

CoverSearch::CoverSearch(const CoverProblem& problem, const CoverGoal& goal, int upper,
                         CoverEffort& effort)
    : problem_(&problem), goal_(goal), upper_(upper), effort_(&effort), relaxation_(problem, goal) {
}

void CoverSearch::start_with(CoverOptions taken) {
    upper_ = value_of(*problem_, goal_.aim, taken);
    best_ = std::move(taken);
}

void CoverSearch::record(const CoverOptions& taken) {
    if (goal_.aim == CoverAim::rank && std::cmp_not_equal(taken.size(), goal_.count))
        return;
    const int value = value_of(*problem_, goal_.aim, taken);
    if (value >= upper_)
        return;
    if (!first_only_)
        upper_ = value;
    best_ = taken;
}

bool CoverSearch::may_drop(const CoverState& state, std::size_t element) const {
    return problem_->elements[element].may_drop &&
           (goal_.aim == CoverAim::coverage || state.dropped() < goal_.drops);
}

int CoverSearch::free_options(const CoverState& state, std::size_t element) const {
    if (goal_.aim == CoverAim::rank && state.count() >= goal_.count)
        return 0;
    const auto& options = problem_->elements[element].options;
    return static_cast<int>(
        std::count_if(options.begin(), options.end(),
                      [&state](const auto& entry) { return state.is_free(entry.at); }));
}

// Takes and drops what must be.
CoverSearch::Settled CoverSearch::settle(CoverState& state) const {
    auto settled = Settled::unchanged;
    for (const std::size_t element : state.open()) {
        if (state.had(element) != k_open)
            continue;
        const int options = free_options(state, element);
        const bool may = may_drop(state, element);
        if (options > 1 || (options == 1 && may))
            continue;
        if (options == 0 && !may)
            return Settled::hopeless;
        settled = Settled::changed;
        if (options == 0)
            state.drop(element);
        else
            for (const auto& entry : problem_->elements[element].options)
                if (state.is_free(entry.at)) {
                    state.take(entry.at);
                    break;
                }
    }
    return settled;
}

std::optional<std::int64_t> CoverSearch::price(CoverState& state, int rounds, CoverPace& pace) {
    const auto before = relaxation_.entries_seen();
    relaxation_.look_at(state);
    const auto bound = relaxation_.improve(rounds, upper_ * k_cover_unit, enough(), pace);
    state.prices = relaxation_.prices();
    effort_->left -= 1 + (relaxation_.entries_seen() - before) / 1000;
    return bound;
}

void CoverSearch::leave_out_hopeless(CoverState& state) {
    for (const std::size_t option : relaxation_.hopeless(enough()))
        state.leave_out(option);
}

// Settles what is certain until nothing is; whether anything is left to look for.
bool CoverSearch::open_up(CoverState& state) {
    auto settled = Settled::changed;
    while (settled == Settled::changed)
        settled = settle(state);
    if (settled == Settled::hopeless)
        return false;
    if (!state.open().empty())
        return true;
    record(state.taken());
    return false;
}

bool CoverSearch::tighten(CoverState& state, int rounds) {
    if (settle(state) == Settled::hopeless)
        return false;
    if (state.open().empty())
        return true;
    CoverPace pace{k_whole_step, k_root_patience, 0};
    const auto at_least = price(state, rounds, pace);
    if (!at_least || *at_least >= enough())
        return false;
    leave_out_hopeless(state);
    return true;
}

void CoverSearch::run(CoverState state) {
    if (!open_up(state))
        return;
    CoverPace pace{k_whole_step, k_root_patience, 0};
    for (int burst = 0; burst < k_root_bursts; ++burst) {
        const auto at_least = price(state, k_root_rounds, pace);
        if (!at_least)
            return;
        root_bound_ =
            std::max(root_bound_, static_cast<int>((*at_least + k_cover_unit - 1) / k_cover_unit));
        if (*at_least >= enough())
            return;
        auto cover = cover_by_price(*problem_, goal_, state);
        if (cover && goal_.aim == CoverAim::rank)
            cover = swapped_for_rank(*problem_, std::move(*cover));
        if (cover)
            record(*cover);
        effort_->left -=
            static_cast<std::int64_t>(problem_->elements.size() * problem_->options.size() / 1000);
        leave_out_hopeless(state);
        if (!open_up(state))
            return;
    }
    explore(std::move(state), k_node_rounds);
}

bool CoverSearch::find_any(CoverState state) {
    best_.reset();
    first_only_ = true;
    stopped_ = false;
    root_bound_ = 0;
    explore(std::move(state), 2 * k_node_rounds);
    return best_.has_value();
}

void CoverSearch::explore(CoverState state, int rounds) {
    for (;;) {
        if (!open_up(state))
            return;
        if (effort_->left <= 0) {
            stopped_ = true;
            return;
        }
        CoverPace pace{k_whole_step, k_node_patience, 0};
        const auto at_least = price(state, rounds, pace);
        if (!at_least || *at_least >= enough())
            return;
        leave_out_hopeless(state);
        const auto settled = settle(state);
        if (settled == Settled::hopeless)
            return;
        if (settled == Settled::unchanged)
            return branch(std::move(state), *at_least);
    }
}

void CoverSearch::branch(CoverState state, std::int64_t at_least) {
    std::size_t narrowest = k_nowhere;
    int fewest = 0;
    for (const std::size_t element : state.open()) {
        const int options = free_options(state, element);
        if (narrowest != k_nowhere && options >= fewest)
            continue;
        narrowest = element;
        fewest = options;
    }
    const auto& element = problem_->elements[narrowest];
    CoverOptions order;
    for (const std::size_t option : relaxation_.by_cost())
        if (state.is_free(option) &&
            std::any_of(element.options.begin(), element.options.end(),
                        [option](const auto& entry) { return entry.at == option; }))
            order.push_back(option);
    for (const std::size_t option : order) {
        auto next = state;
        next.take(option);
        explore(std::move(next), k_node_rounds);
        // A better cover found meanwhile may leave nothing here.
        if (done() || at_least >= enough())
            return;
        state.leave_out(option);
    }
    if (!may_drop(state, narrowest))
        return;
    state.drop(narrowest);
    explore(std::move(state), k_node_rounds);
}

} // namespace make
