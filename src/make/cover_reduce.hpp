// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Makes a cover problem smaller before any search: takes what must be taken, and leaves out what
// cannot matter.
#pragma once

#include "make/cover_problem.hpp"

namespace make {

struct Reduced {
    CoverProblem problem;
    std::vector<int> taken; // the caller's indexes of options that every best cover has
};

enum class Dominance {
    // An option gives way to a better or equal one of lower index only: keeps the very best cover,
    // tie-break included.
    lower_index,
    // An option gives way to any that is better or equal: keeps the count and the total of ranks of
    // the best cover, but perhaps not the one that the tie-break prefers.
    any,
};

[[nodiscard]] Reduced reduce(const CoverProblem& problem, Dominance dominance);

} // namespace make
