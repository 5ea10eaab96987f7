// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tie-break between covers that are equally good.
#pragma once

#include "make/cover_search.hpp"

namespace make {

// A state that has taken nothing, with prices to begin with that suit a good cover.
[[nodiscard]] CoverState priced_by(const CoverProblem& problem, const CoverOptions& taken);

// Of the covers that drop no more, take as many options and have the same total of ranks as the
// best cover given, the lexicographically least: ascending options. When the effort runs out, the
// least found so far.
[[nodiscard]] CoverOptions first_of_best(const CoverProblem& problem, int drops, CoverOptions best,
                                         CoverEffort& effort);

} // namespace make
