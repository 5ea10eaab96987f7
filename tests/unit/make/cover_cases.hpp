// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Cover problems for the tests: at random, and shaped like those of a shop; and what a cover is
// worth, reckoned from the choices alone.
#pragma once

#include <random>
#include <vector>

#include "make/cover.hpp"

namespace cover_cases {

struct Case {
    int elements = 0;
    std::vector<make::Choice> choices;
};

using Chance = std::mt19937;

// From lo to hi, the same on every machine.
[[nodiscard]] int between(Chance& chance, int lo, int hi);

struct Shape {
    int elements = 8;
    int choices = 12;
    int largest = 4; // elements of a choice
    int worst = 3;   // rank
    int resources = 0;
    int sharing = 5; // of ten choices, that name a resource
};

[[nodiscard]] Case at_random(Chance& chance, const Shape& shape);

// Screws of the usual sizes and bodies of the usual bores, measured: a choice is a pilot of one
// shank and one diameter, and covers the screws whose hole it runs in and that one of the bodies
// it slips in suits. Some screws are beyond every body.
[[nodiscard]] Case like_a_shop(Chance& chance, int screws, int bodies);

struct Worth {
    int covered = 0;
    int count = 0;
    int total = 0;
    bool allowed = true; // no resource named twice
};

[[nodiscard]] Worth worth_of(const Case& problem, const std::vector<int>& chosen);

} // namespace cover_cases
