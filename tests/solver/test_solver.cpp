// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include "model.hpp"

using cover_cases::at_random;
using cover_cases::between;
using cover_cases::Case;
using cover_cases::Chance;

namespace {

void agrees_with_solver(const Case& problem, const model::Solver& solver) {
    const auto cover = make::least_cover(problem.elements, problem.choices, 1'000'000);
    const auto worth = worth_of(problem, cover.chosen);
    REQUIRE(cover.proven);
    REQUIRE(worth.allowed);
    REQUIRE(cover.bound == worth.count);
    const int dropped = problem.elements - worth.covered;
    const int fewest = solver.solve(model::fewest(problem));
    REQUIRE(dropped == fewest / model::drop_cost(problem));
    REQUIRE(worth.count == fewest % model::drop_cost(problem));
    REQUIRE(worth.total == solver.solve(model::best_ranks(problem, worth.count, dropped)));
}

} // namespace

TEST_CASE("glpsol finds the same coverage, count and ranks on random covers") {
    const model::Solver solver;
    Chance chance(2026);
    for (int i = 0; i < 300; ++i) {
        CAPTURE(i);
        cover_cases::Shape shape;
        shape.elements = between(chance, 4, 24);
        shape.choices = between(chance, 6, 50);
        shape.largest = between(chance, 2, 6);
        shape.resources = between(chance, 0, 5);
        shape.sharing = between(chance, 2, 10);
        agrees_with_solver(at_random(chance, shape), solver);
    }
}

TEST_CASE("glpsol finds the same coverage, count and ranks on covers like a shop's") {
    const model::Solver solver;
    Chance chance(60);
    for (int i = 0; i < 30; ++i) {
        CAPTURE(i);
        agrees_with_solver(cover_cases::like_a_shop(chance, between(chance, 20, 50), 30), solver);
    }
}
