// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/cover_greedy.hpp"

#include <algorithm>
#include <utility>

namespace make {

namespace {

CoverState taking(const CoverProblem& problem, const CoverOptions& options) {
    CoverState state(problem);
    for (const std::size_t option : options)
        state.take(option);
    return state;
}

// From the last taken: leaves out those without which as much is covered.
CoverOptions without_spare(const CoverProblem& problem, CoverOptions taken) {
    std::vector<int> times(problem.elements.size(), 0);
    for (const std::size_t option : taken)
        for (const auto& entry : problem.options[option].elements)
            ++times[entry.at];
    for (std::size_t i = taken.size(); i-- > 0;) {
        const auto& entries = problem.options[taken[i]].elements;
        const bool spare = std::all_of(entries.begin(), entries.end(), [&](const auto& entry) {
            return times[entry.at] > 1 || problem.elements[entry.at].had >= 0;
        });
        if (!spare)
            continue;
        for (const auto& entry : entries)
            --times[entry.at];
        taken.erase(taken.begin() + static_cast<std::ptrdiff_t>(i));
    }
    return taken;
}

std::optional<CoverOptions> finished(const CoverProblem& problem, const CoverGoal& goal,
                                     const CoverState& state) {
    const auto open = state.open();
    const bool may = std::all_of(open.begin(), open.end(),
                                 [&](std::size_t e) { return problem.elements[e].may_drop; });
    const int dropped = state.dropped() + static_cast<int>(open.size());
    if (!may || (goal.aim != CoverAim::coverage && dropped > goal.drops))
        return std::nullopt;
    return without_spare(problem, state.taken());
}

} // namespace

std::optional<CoverOptions> cover_by_price(const CoverProblem& problem, const CoverGoal& goal,
                                           CoverState state) {
    for (;;) {
        std::size_t best = k_nowhere;
        std::int64_t best_worth = 0;
        for (std::size_t o = 0; o < problem.options.size(); ++o) {
            if (!state.is_free(o) || !state.covers_an_open(o))
                continue;
            std::int64_t worth = 0;
            for (const auto& entry : problem.options[o].elements) {
                const int had = state.had(entry.at);
                if (had == k_open)
                    worth += state.prices[entry.at] - entry.rank * k_cover_unit;
                else if (improves(entry, had))
                    worth += (had - entry.rank) * k_cover_unit;
            }
            if (best != k_nowhere && worth <= best_worth)
                continue;
            best = o;
            best_worth = worth;
        }
        if (best == k_nowhere)
            return finished(problem, goal, state);
        state.take(best);
    }
}

std::optional<CoverOptions> cover_greedily(const CoverProblem& problem, const CoverGoal& goal,
                                           CoverState state) {
    for (;;) {
        std::size_t best = k_nowhere;
        std::pair<int, int> best_worth{0, 0};
        for (std::size_t o = 0; o < problem.options.size(); ++o) {
            std::pair<int, int> worth{0, 0};
            for (const auto& entry : problem.options[o].elements)
                if (state.had(entry.at) == k_open) {
                    ++worth.first;
                    worth.second -= entry.rank;
                }
            if (state.is_free(o) && worth.first > 0 && (best == k_nowhere || worth > best_worth)) {
                best = o;
                best_worth = worth;
            }
        }
        if (best == k_nowhere)
            return finished(problem, goal, state);
        state.take(best);
    }
}

namespace {

// The best option to put in the place of the one at `place`, if it is better.
std::optional<std::size_t> better_at(const CoverProblem& problem, const CoverOptions& taken,
                                     std::size_t place) {
    auto rest = taken;
    rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(place));
    const auto state = taking(problem, rest);
    // What the one left out alone covered: all of it must be covered again.
    std::vector<std::size_t> bare;
    for (const auto& entry : problem.options[taken[place]].elements)
        if (state.had(entry.at) == k_open)
            bare.push_back(entry.at);
    if (bare.empty())
        return std::nullopt;
    const auto gain = [&](std::size_t option) {
        int needed = static_cast<int>(bare.size());
        int total = 0;
        for (const auto& entry : problem.options[option].elements) {
            const int had = state.had(entry.at);
            if (had == k_open && std::binary_search(bare.begin(), bare.end(), entry.at)) {
                --needed;
                total -= entry.rank;
            } else if (had >= 0) {
                total += std::max(0, had - entry.rank);
            }
        }
        return needed == 0 ? std::optional(total) : std::nullopt;
    };
    std::optional<std::size_t> best;
    int most = *gain(taken[place]);
    for (const auto& entry : problem.elements[bare.front()].options) {
        const auto total = state.is_free(entry.at) ? gain(entry.at) : std::nullopt;
        if (!total || *total <= most)
            continue;
        most = *total;
        best = entry.at;
    }
    return best;
}

} // namespace

CoverOptions swapped_for_rank(const CoverProblem& problem, CoverOptions taken) {
    for (bool swapped = true; swapped;) {
        swapped = false;
        for (std::size_t i = 0; i < taken.size(); ++i) {
            const auto better = better_at(problem, taken, i);
            if (!better)
                continue;
            taken[i] = *better;
            swapped = true;
        }
    }
    return taken;
}

int value_of(const CoverProblem& problem, CoverAim aim, const CoverOptions& taken) {
    const auto state = taking(problem, taken);
    switch (aim) {
    case CoverAim::coverage:
        return static_cast<int>(state.open().size());
    case CoverAim::count:
        return static_cast<int>(taken.size());
    case CoverAim::rank:
        return static_cast<int>(state.total_rank());
    }
    return 0;
}

} // namespace make
