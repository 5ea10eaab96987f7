// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/cover_problem.hpp"

#include <algorithm>
#include <map>
#include <numeric>

namespace make {

namespace {

void list_options(CoverProblem& problem) {
    for (auto& element : problem.elements)
        element.options.clear();
    for (std::size_t o = 0; o < problem.options.size(); ++o)
        for (const auto& entry : problem.options[o].elements)
            problem.elements[entry.at].options.push_back({o, entry.rank});
}

// Sets of whole numbers that are joined step by step.
class Groups {
  public:
    explicit Groups(std::size_t size) : parent_(size) {
        std::iota(parent_.begin(), parent_.end(), std::size_t{0});
    }
    std::size_t of(std::size_t item) {
        while (parent_[item] != item)
            item = parent_[item] = parent_[parent_[item]];
        return item;
    }
    void join(std::size_t a, std::size_t b) {
        a = of(a);
        b = of(b);
        parent_[std::max(a, b)] = std::min(a, b);
    }

  private:
    std::vector<std::size_t> parent_;
};

} // namespace

CoverProblem problem_of(int elements, const std::vector<Choice>& choices) {
    CoverProblem problem;
    problem.elements.resize(static_cast<std::size_t>(elements));
    for (std::size_t c = 0; c < choices.size(); ++c) {
        const auto& choice = choices[c];
        CoverOption option{{}, choice.resource, static_cast<int>(c)};
        for (std::size_t i = 0; i < choice.elements.size(); ++i)
            option.elements.push_back(
                {static_cast<std::size_t>(choice.elements[i]), choice.ranks[i]});
        problem.options.push_back(std::move(option));
    }
    list_options(problem);
    std::vector<bool> keep_elements;
    for (auto& element : problem.elements) {
        keep_elements.push_back(!element.options.empty());
        element.may_drop =
            std::all_of(element.options.begin(), element.options.end(),
                        [&](const auto& entry) { return problem.options[entry.at].resource >= 0; });
    }
    std::vector<bool> keep_options;
    for (const auto& option : problem.options)
        keep_options.push_back(!option.elements.empty());
    return part_of(problem, keep_elements, keep_options);
}

CoverProblem part_of(const CoverProblem& problem, const std::vector<bool>& keep_elements,
                     const std::vector<bool>& keep_options) {
    CoverProblem part;
    std::vector<std::size_t> place(problem.elements.size(), k_nowhere);
    for (std::size_t e = 0; e < problem.elements.size(); ++e) {
        if (!keep_elements[e])
            continue;
        place[e] = part.elements.size();
        part.elements.push_back({{}, problem.elements[e].had, problem.elements[e].may_drop});
    }
    for (std::size_t o = 0; o < problem.options.size(); ++o) {
        if (!keep_options[o])
            continue;
        const auto& from = problem.options[o];
        CoverOption option{{}, from.resource, from.index};
        for (const auto& entry : from.elements)
            if (place[entry.at] != k_nowhere && improves(entry, problem.elements[entry.at].had))
                option.elements.push_back({place[entry.at], entry.rank});
        part.options.push_back(std::move(option));
    }
    list_options(part);
    return part;
}

CoverProblem without_ranks(const CoverProblem& problem) {
    std::vector<bool> open;
    for (const auto& element : problem.elements)
        open.push_back(element.had == k_open);
    auto part = part_of(problem, open, std::vector<bool>(problem.options.size(), true));
    for (auto& option : part.options)
        for (auto& entry : option.elements)
            entry.rank = 0;
    list_options(part);
    return part;
}

CoverProblem droppable_part(const CoverProblem& problem) {
    std::vector<bool> elements;
    for (const auto& element : problem.elements)
        elements.push_back(element.may_drop && element.had == k_open);
    std::vector<bool> options;
    for (const auto& option : problem.options)
        options.push_back(std::any_of(option.elements.begin(), option.elements.end(),
                                      [&](const auto& entry) { return elements[entry.at]; }));
    return without_ranks(part_of(problem, elements, options));
}

std::vector<CoverProblem> split(const CoverProblem& problem) {
    const std::size_t elements = problem.elements.size();
    Groups groups(elements);
    std::map<int, std::size_t> first_of_resource;
    for (const auto& option : problem.options) {
        if (option.elements.empty())
            continue;
        const std::size_t first = option.elements.front().at;
        for (const auto& entry : option.elements)
            groups.join(first, entry.at);
        if (option.resource >= 0)
            groups.join(first, first_of_resource.try_emplace(option.resource, first).first->second);
    }
    std::map<std::size_t, std::vector<bool>> members;
    for (std::size_t e = 0; e < elements; ++e)
        members.try_emplace(groups.of(e), elements, false).first->second[e] = true;
    std::vector<CoverProblem> parts;
    for (const auto& [group, keep] : members) {
        std::vector<bool> options;
        for (const auto& option : problem.options)
            options.push_back(!option.elements.empty() &&
                              groups.of(option.elements.front().at) == group);
        parts.push_back(part_of(problem, keep, options));
    }
    return parts;
}

CoverOptions options_with(const CoverProblem& problem, const std::vector<int>& indexes) {
    CoverOptions options;
    for (std::size_t o = 0; o < problem.options.size(); ++o)
        if (std::find(indexes.begin(), indexes.end(), problem.options[o].index) != indexes.end())
            options.push_back(o);
    return options;
}

CoverProblem all_needed(CoverProblem problem) {
    for (auto& element : problem.elements)
        element.may_drop = false;
    return problem;
}

} // namespace make
