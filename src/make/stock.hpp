// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Which bar to cut, and how much of it.
#pragma once

#include <vector>

#include "make/spec.hpp"

namespace make {

// Lost in parting off, and left over in the chuck (common practice: a 3/32 parting tool, and so
// much of the bar that three jaws still hold it).
inline constexpr length::Length k_usual_kerf = length::sixty_fourths(6);
inline constexpr length::Length k_usual_grip = length::sixty_fourths(64);

struct Cut {
    int item = 0;          // on the make-list
    length::Length length; // to saw or part off, facing allowance included
};

struct BarPlan {
    length::Length diameter;
    std::vector<Cut> cuts; // longest first, then by item
    length::Length kerf;   // after each cut
    length::Length total;  // of bar needed, with kerfs and a grip for the chuck
};

// One plan a diameter, ascending; pieces that need no bar are left out. `specs` are in the order
// of the pieces.
[[nodiscard]] std::vector<BarPlan> plan_stock(const std::vector<Piece>& pieces,
                                              const std::vector<Spec>& specs, length::Length kerf,
                                              length::Length grip);

// The least bar that leaves 1/64 in of the diameter to clean up (common practice; it also leaves
// what grinding takes). Where the shop's `bars` (ascending) are all too small, the next whole
// 1/16 in or millimetre. `own` says which.
struct BarChoice {
    length::Length diameter;
    bool own = true;
};
[[nodiscard]] BarChoice bar_for(length::Length finished, const std::vector<length::Length>& bars,
                                length::Unit unit);

// What a shop without a list of its own is taken to have: drill rod 1/8 to 1 in by 1/16, or 3 to
// 25 mm by whole millimetres (common practice).
[[nodiscard]] std::vector<length::Length> usual_bars(length::Unit unit);

} // namespace make
