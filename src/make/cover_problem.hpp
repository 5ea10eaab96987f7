// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A cover problem as the search works on it: elements and options that name each other. What has
// been taken already is remembered in the elements, so that a part of a problem is a problem.
#pragma once

#include <cstddef>
#include <limits>
#include <vector>

#include "make/cover.hpp"

namespace make {

inline constexpr int k_open = -1;    // nothing taken covers the element yet
inline constexpr int k_dropped = -2; // the element is given up

// Options by their places in a problem.
using CoverOptions = std::vector<std::size_t>;
inline constexpr std::size_t k_nowhere = std::numeric_limits<std::size_t>::max();

// In an element: an option that covers it. In an option: an element that it covers.
struct CoverEntry {
    std::size_t at = 0;
    int rank = 0;
};

struct CoverElement {
    std::vector<CoverEntry> options; // ascending
    int had = k_open;                // or the best rank among the options taken already
    bool may_drop = false;           // every option that covers it competes for a resource
};

struct CoverOption {
    std::vector<CoverEntry> elements; // ascending
    int resource = -1;
    int index = 0; // of the caller's choice
};

struct CoverProblem {
    std::vector<CoverElement> elements;
    std::vector<CoverOption> options; // ascending by index
};

// Whether taking the option improves on what the element has.
[[nodiscard]] inline bool improves(const CoverEntry& entry, int had) {
    return had == k_open || (had >= 0 && entry.rank < had);
}

// Leaves out the elements that no choice covers.
[[nodiscard]] CoverProblem problem_of(int elements, const std::vector<Choice>& choices);

// The part that the kept elements and options make: two flags for each, in their order.
[[nodiscard]] CoverProblem part_of(const CoverProblem& problem,
                                   const std::vector<bool>& keep_elements,
                                   const std::vector<bool>& keep_options);

// Only the elements still open, all ranks alike: for counting.
[[nodiscard]] CoverProblem without_ranks(const CoverProblem& problem);

// Only the elements that may be dropped, all ranks alike.
[[nodiscard]] CoverProblem droppable_part(const CoverProblem& problem);

// The parts that share no element, option or resource, by their first element.
[[nodiscard]] std::vector<CoverProblem> split(const CoverProblem& problem);

// The options with these of the caller's indexes, as far as the problem has them; ascending.
[[nodiscard]] CoverOptions options_with(const CoverProblem& problem,
                                        const std::vector<int>& indexes);

// The same problem when it is known that every element can be covered at once.
[[nodiscard]] CoverProblem all_needed(CoverProblem problem);

} // namespace make
