// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Covers that are good but not proven best, for a search to beat.
#pragma once

#include <optional>
#include <vector>

#include "make/cover_state.hpp"

namespace make {

// From the state on, always takes the option that earns most by the state's prices. Nothing if more
// elements are left than the goal lets drop. The state may have taken options already.
[[nodiscard]] std::optional<CoverOptions> cover_by_price(const CoverProblem& problem,
                                                         const CoverGoal& goal, CoverState state);

// The same, but takes the option that covers most of what is open, then at the best ranks.
[[nodiscard]] std::optional<CoverOptions> cover_greedily(const CoverProblem& problem,
                                                         const CoverGoal& goal, CoverState state);

// Puts other options in the place of taken ones, one for one, as long as the total of ranks drops.
[[nodiscard]] CoverOptions swapped_for_rank(const CoverProblem& problem, CoverOptions taken);

// The value of a cover for the aim: elements dropped, options taken or total of ranks.
[[nodiscard]] int value_of(const CoverProblem& problem, CoverAim aim, const CoverOptions& taken);

} // namespace make
