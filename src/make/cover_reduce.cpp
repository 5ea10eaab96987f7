// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The reductions are those usual for set covering, with ranks and resources minded:
// - an element that a single option covers, and that is not to be dropped, takes that option;
// - an option without an open element is in no best cover, for each of its options earns its place
//   by an element that no other covers;
// - an option gives way to another that covers all it covers, nowhere at a worse rank, and that
//   needs no resource or the same one: putting the other in its place makes no cover worse;
// - an element whose rank is settled need not be looked at if another's options all cover it.

#include "make/cover_reduce.hpp"

#include <algorithm>
#include <map>

namespace make {

namespace {

class Reducer {
  public:
    Reducer(const CoverProblem& problem, Dominance dominance)
        : problem_(problem), dominance_(dominance), elements_(problem.elements.size(), true),
          options_(problem.options.size(), true) {}

    Reduced run() {
        bool changed = true;
        while (changed) {
            changed = free_lone_resources();
            changed = take_forced() || changed;
            changed = drop_idle() || changed;
            changed = drop_worse_options() || changed;
            changed = drop_implied_elements() || changed;
            compact();
        }
        return {std::move(problem_), std::move(taken_)};
    }

  private:
    void compact() {
        problem_ = part_of(problem_, elements_, options_);
        elements_.assign(problem_.elements.size(), true);
        options_.assign(problem_.options.size(), true);
    }

    bool free_lone_resources();
    bool take_forced();
    bool drop_idle();
    bool drop_worse_options();
    bool drop_implied_elements();
    void take(std::size_t option);
    [[nodiscard]] bool gives_way(std::size_t option, std::size_t other) const;
    [[nodiscard]] bool implies(std::size_t element, std::size_t other) const;

    CoverProblem problem_;
    Dominance dominance_;
    std::vector<bool> elements_; // kept
    std::vector<bool> options_;
    std::vector<int> taken_;
};

// A resource that one option alone names forbids nothing.
bool Reducer::free_lone_resources() {
    std::map<int, int> users;
    for (const auto& option : problem_.options)
        ++users[option.resource];
    bool changed = false;
    for (auto& option : problem_.options) {
        if (option.resource < 0 || users[option.resource] > 1)
            continue;
        option.resource = -1;
        for (const auto& entry : option.elements)
            problem_.elements[entry.at].may_drop = false;
        changed = true;
    }
    return changed;
}

void Reducer::take(std::size_t option) {
    const auto& taken = problem_.options[option];
    taken_.push_back(taken.index);
    options_[option] = false;
    for (const auto& entry : taken.elements) {
        auto& element = problem_.elements[entry.at];
        if (improves(entry, element.had))
            element.had = entry.rank;
        element.may_drop = false;
    }
    for (std::size_t o = 0; o < problem_.options.size(); ++o)
        if (taken.resource >= 0 && problem_.options[o].resource == taken.resource)
            options_[o] = false;
}

bool Reducer::take_forced() {
    bool changed = false;
    for (const auto& element : problem_.elements) {
        if (element.had != k_open || element.may_drop)
            continue;
        std::size_t only = 0;
        int count = 0;
        for (const auto& entry : element.options)
            if (options_[entry.at]) {
                only = entry.at;
                ++count;
            }
        if (count != 1)
            continue;
        take(only);
        changed = true;
    }
    return changed;
}

bool Reducer::drop_idle() {
    bool changed = false;
    for (std::size_t o = 0; o < problem_.options.size(); ++o) {
        const auto& entries = problem_.options[o].elements;
        const bool open = std::any_of(entries.begin(), entries.end(), [&](const auto& entry) {
            return problem_.elements[entry.at].had == k_open;
        });
        if (options_[o] && !open) {
            options_[o] = false;
            changed = true;
        }
    }
    for (std::size_t e = 0; e < problem_.elements.size(); ++e) {
        const auto& element = problem_.elements[e];
        const bool settled =
            std::none_of(element.options.begin(), element.options.end(), [&](const auto& entry) {
                return options_[entry.at] && improves(entry, element.had);
            });
        if (element.had != k_open && settled) {
            elements_[e] = false;
            changed = true;
        }
    }
    return changed;
}

bool Reducer::gives_way(std::size_t option, std::size_t other) const {
    const auto& mine = problem_.options[option];
    const auto& theirs = problem_.options[other];
    if (theirs.resource >= 0 && theirs.resource != mine.resource)
        return false;
    auto at = theirs.elements.begin();
    for (const auto& entry : mine.elements) {
        const int had = problem_.elements[entry.at].had;
        if (!improves(entry, had))
            continue;
        while (at != theirs.elements.end() && at->at < entry.at)
            ++at;
        if (at == theirs.elements.end() || at->at != entry.at || at->rank > entry.rank)
            return false;
    }
    return true;
}

bool Reducer::drop_worse_options() {
    bool changed = false;
    // From the last, so that of several alike the first stays.
    for (std::size_t o = problem_.options.size(); o-- > 0;) {
        const auto& mine = problem_.options[o].elements;
        if (!options_[o] || mine.empty())
            continue;
        const auto rarest = std::min_element(mine.begin(), mine.end(), [&](auto& a, auto& b) {
            return problem_.elements[a.at].options.size() < problem_.elements[b.at].options.size();
        });
        for (const auto& entry : problem_.elements[rarest->at].options) {
            const std::size_t other = entry.at;
            if (other > o && dominance_ == Dominance::lower_index)
                break;
            if (other == o || !options_[other] || !gives_way(o, other))
                continue;
            options_[o] = false;
            changed = true;
            break;
        }
    }
    return changed;
}

// Whether each option of the element covers the other too.
bool Reducer::implies(std::size_t element, std::size_t other) const {
    const auto& theirs = problem_.elements[other].options;
    auto at = theirs.begin();
    for (const auto& entry : problem_.elements[element].options) {
        if (!options_[entry.at])
            continue;
        while (at != theirs.end() && at->at < entry.at)
            ++at;
        if (at == theirs.end() || at->at != entry.at)
            return false;
    }
    return true;
}

bool Reducer::drop_implied_elements() {
    bool changed = false;
    for (std::size_t e = 0; e < problem_.elements.size(); ++e) {
        const auto& element = problem_.elements[e];
        const auto first = std::find_if(element.options.begin(), element.options.end(),
                                        [&](const auto& entry) { return options_[entry.at]; });
        if (!elements_[e] || element.had != k_open || element.may_drop ||
            first == element.options.end())
            continue;
        for (const auto& implied : problem_.options[first->at].elements) {
            const std::size_t other = implied.at;
            const auto& theirs = problem_.elements[other];
            const bool one_rank =
                std::all_of(theirs.options.begin(), theirs.options.end(),
                            [&](const auto& entry) { return entry.rank == implied.rank; });
            if (other == e || !elements_[other] || theirs.had != k_open || !one_rank ||
                !implies(e, other))
                continue;
            elements_[other] = false;
            changed = true;
        }
    }
    return changed;
}

} // namespace

Reduced reduce(const CoverProblem& problem, Dominance dominance) {
    return Reducer(problem, dominance).run();
}

} // namespace make
