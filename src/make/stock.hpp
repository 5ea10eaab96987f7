// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Which bar to cut, and how much of it.
#pragma once

#include <vector>

#include "make/spec.hpp"

namespace make {

struct Cut {
    int item = 0;          // on the make-list
    length::Length length; // to saw or part off, facing allowance included
};

struct BarPlan {
    length::Length diameter;
    std::vector<Cut> cuts; // longest first, then by item
    length::Length kerf;   // between two cuts
    length::Length total;  // of bar needed, with kerfs and a grip for the chuck
};

// One plan a diameter, ascending. `specs` are in the order of the items, from 1.
[[nodiscard]] std::vector<BarPlan> plan_stock(const std::vector<Piece>& pieces,
                                              const std::vector<Spec>& specs, length::Length kerf,
                                              length::Length grip);

} // namespace make
