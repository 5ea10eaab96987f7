// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The problem is first reduced in ways that keep the best cover to the letter, then falls into
// parts that share nothing. Their best covers together are the best cover: elements, counts and
// totals add up, and lists of fixed sizes merge to the least list if each is least.

#include "make/cover.hpp"

#include <algorithm>
#include <utility>

#include "make/cover_part.hpp"
#include "make/cover_reduce.hpp"

namespace make {

namespace {

// Runs a pass over the parts; no pass may use up what the next ones need.
class Passes {
  public:
    explicit Passes(std::int64_t most) : left_(most) {}

    template <typename Pass>
    void run(std::vector<CoverPart>& parts, Pass pass, bool last = false) {
        CoverEffort effort{last ? left_ : left_ / 2};
        left_ -= effort.left;
        for (auto& part : parts)
            (part.*pass)(effort);
        left_ += effort.left;
    }

  private:
    std::int64_t left_;
};

// No cover of so many elements has fewer choices than this: the largest choices together must
// have as many.
int bound_by_size(int covered, const std::vector<Choice>& choices) {
    std::vector<int> sizes;
    for (const auto& choice : choices)
        sizes.push_back(static_cast<int>(choice.elements.size()));
    std::sort(sizes.rbegin(), sizes.rend());
    int bound = 0;
    int have = 0;
    for (const int size : sizes) {
        if (have >= covered)
            break;
        have += size;
        ++bound;
    }
    return bound;
}

int covered_by(int elements, const std::vector<Choice>& choices, const std::vector<int>& chosen) {
    std::vector<bool> covered(static_cast<std::size_t>(elements), false);
    for (const int c : chosen)
        for (const int element : choices[static_cast<std::size_t>(c)].elements)
            covered[static_cast<std::size_t>(element)] = true;
    return static_cast<int>(std::count(covered.begin(), covered.end(), true));
}

} // namespace

Cover least_cover(int elements, const std::vector<Choice>& choices, std::int64_t most_nodes) {
    auto reduced = reduce(problem_of(elements, choices), Dominance::lower_index);
    std::vector<CoverPart> parts;
    for (auto& problem : split(reduced.problem))
        parts.emplace_back(std::move(problem));
    // Hard parts last, so that they do not take from the easy ones.
    std::stable_sort(parts.begin(), parts.end(),
                     [](const CoverPart& a, const CoverPart& b) { return a.size() < b.size(); });
    Passes passes(most_nodes);
    passes.run(parts, &CoverPart::cover_most);
    passes.run(parts, &CoverPart::take_fewest);
    passes.run(parts, &CoverPart::rank_best);
    passes.run(parts, &CoverPart::break_ties, true);

    Cover cover{std::move(reduced.taken), true, 0};
    cover.bound = static_cast<int>(cover.chosen.size());
    bool most_covered = true;
    for (const auto& part : parts) {
        cover.chosen.insert(cover.chosen.end(), part.chosen().begin(), part.chosen().end());
        cover.bound += part.bound();
        cover.proven = cover.proven && part.proven();
        most_covered = most_covered && part.coverage_proven();
    }
    std::sort(cover.chosen.begin(), cover.chosen.end());
    if (!most_covered)
        cover.bound = bound_by_size(covered_by(elements, choices, cover.chosen), choices);
    return cover;
}

} // namespace make
