// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/cover_state.hpp"

#include <algorithm>

namespace make {

CoverState::CoverState(const CoverProblem& problem)
    : prices(problem.elements.size(), 0), problem_(&problem), free_(problem.options.size(), true) {
    for (const auto& element : problem.elements)
        had_.push_back(element.had);
}

void CoverState::take(std::size_t option) {
    const auto& taken = problem_->options[option];
    free_[option] = false;
    taken_.push_back(option);
    for (const auto& entry : taken.elements)
        if (improves(entry, had_[entry.at]))
            had_[entry.at] = entry.rank;
    if (taken.resource < 0)
        return;
    for (std::size_t o = 0; o < free_.size(); ++o)
        if (problem_->options[o].resource == taken.resource)
            free_[o] = false;
}

void CoverState::drop(std::size_t element) {
    had_[element] = k_dropped;
    ++dropped_;
    for (const auto& entry : problem_->elements[element].options)
        free_[entry.at] = false;
}

std::int64_t CoverState::total_rank() const {
    std::int64_t total = 0;
    for (const int had : had_)
        total += std::max(had, 0);
    return total;
}

bool CoverState::covers_an_open(std::size_t option) const {
    const auto& entries = problem_->options[option].elements;
    return std::any_of(entries.begin(), entries.end(),
                       [this](const auto& entry) { return had_[entry.at] == k_open; });
}

std::vector<std::size_t> CoverState::open() const {
    std::vector<std::size_t> open;
    for (std::size_t e = 0; e < had_.size(); ++e)
        if (had_[e] == k_open)
            open.push_back(e);
    return open;
}

} // namespace make
