// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include <algorithm>
#include <ctime>
#include <numeric>
#include <tuple>

#include "cases.hpp"
#include "cover_cases.hpp"

using cover_cases::at_random;
using cover_cases::between;
using cover_cases::Case;
using cover_cases::Chance;
using cover_cases::Shape;
using cover_cases::worth_of;

namespace {

constexpr std::int64_t k_plenty = 1'000'000;

// Times are promised of the program as it is installed.
#ifdef NDEBUG
constexpr double k_second = 1.0;
#else
constexpr double k_second = 60.0;
#endif

// Of the processor: other tests run at the same time.
double seconds_since(std::clock_t start) {
    return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

using Order = std::tuple<int, int, int, std::vector<int>>;

Order order_of(const Case& problem, const std::vector<int>& chosen) {
    const auto worth = worth_of(problem, chosen);
    return {-worth.covered, worth.count, worth.total, chosen};
}

// The best of all subsets, by trying them all.
std::vector<int> best_of_all(const Case& problem) {
    std::vector<int> best;
    auto best_order = order_of(problem, best);
    const unsigned subsets = 1U << problem.choices.size();
    for (unsigned subset = 1; subset < subsets; ++subset) {
        std::vector<int> chosen;
        for (int c = 0; c < static_cast<int>(problem.choices.size()); ++c)
            if ((subset >> c & 1U) != 0)
                chosen.push_back(c);
        if (!worth_of(problem, chosen).allowed)
            continue;
        auto order = order_of(problem, chosen);
        if (order < best_order) {
            best_order = std::move(order);
            best = std::move(chosen);
        }
    }
    return best;
}

Shape small_shape(Chance& chance) {
    Shape shape;
    shape.elements = between(chance, 1, 9);
    shape.choices = between(chance, 0, 12);
    shape.largest = between(chance, 1, 5);
    shape.worst = between(chance, 0, 3);
    shape.resources = between(chance, 0, 3);
    shape.sharing = between(chance, 2, 10);
    return shape;
}

make::Cover cover_of(const Case& problem, std::int64_t nodes = k_plenty) {
    return make::least_cover(problem.elements, problem.choices, nodes);
}

} // namespace

TEST_CASE("nothing to cover takes nothing, and is proven") {
    const auto cover = make::least_cover(0, {}, 100);
    CHECK(cover.chosen.empty());
    CHECK(cover.proven);
    CHECK(cover.bound == 0);
    CHECK(make::least_cover(3, {}, 100).proven);
}

TEST_CASE("fewer choices go before better ranks, better ranks before lower indexes") {
    const std::vector<make::Choice> choices{
        {{0}, {0}, -1},       {{1}, {0}, -1},       {{0, 1}, {3, 3}, -1},
        {{0, 1}, {3, 2}, -1}, {{0, 1}, {2, 3}, -1},
    };
    CHECK(make::least_cover(2, choices, k_plenty).chosen == std::vector<int>{3});
}

TEST_CASE("a resource is used once, and more covered goes before fewer choices") {
    // One owned pilot could be turned to either size: the second screw needs a choice of its own.
    const std::vector<make::Choice> choices{
        {{0, 1}, {0, 0}, 7},
        {{2}, {0}, 7},
        {{2}, {3}, -1},
        {{3}, {0}, 7},
    };
    const auto cover = make::least_cover(4, choices, k_plenty);
    CHECK(cover.chosen == std::vector<int>{0, 2});
    CHECK(cover.proven);
    CHECK(cover.bound == 2);
}

TEST_CASE("the cover is the best of all subsets, tie-break included") {
    Chance chance(1);
    for (int i = 0; i < cases::some(4000); ++i) {
        const auto problem = at_random(chance, small_shape(chance));
        CAPTURE(i);
        const auto cover = cover_of(problem);
        REQUIRE(cover.chosen == best_of_all(problem));
        REQUIRE(cover.proven);
        REQUIRE(cover.bound == static_cast<int>(cover.chosen.size()));
    }
}

TEST_CASE("with every effort the bound holds, and what is called proven is") {
    Chance chance(2);
    int unproven = 0;
    for (int i = 0; i < cases::some(1500); ++i) {
        auto shape = small_shape(chance);
        shape.elements += 4;
        shape.choices += 2;
        const auto problem = at_random(chance, shape);
        const auto best = worth_of(problem, best_of_all(problem));
        for (const int nodes : {0, 1, 2, 4, 8}) {
            CAPTURE(i);
            CAPTURE(nodes);
            const auto cover = cover_of(problem, nodes);
            const auto worth = worth_of(problem, cover.chosen);
            REQUIRE(worth.allowed);
            REQUIRE(worth.covered <= best.covered);
            REQUIRE(cover.bound <= best.count);
            REQUIRE(cover.bound <= worth.count);
            unproven += cover.proven ? 0 : 1;
            if (!cover.proven)
                continue;
            REQUIRE(worth.covered == best.covered);
            REQUIRE(worth.count == best.count);
            REQUIRE(worth.total == best.total);
            REQUIRE(cover.bound == best.count);
        }
    }
    CHECK(unproven > 0);
}

TEST_CASE("the order of elements and of choices changes neither count nor total") {
    Chance chance(3);
    for (int i = 0; i < cases::some(60); ++i) {
        const Shape shape{24, 60, 5, 3, i % 3 == 0 ? 4 : 0, 5};
        const auto problem = at_random(chance, shape);
        std::vector<int> names(24);
        std::iota(names.begin(), names.end(), 0);
        std::shuffle(names.begin(), names.end(), chance);
        Case other{problem.elements, {}};
        for (const auto& choice : problem.choices) {
            std::vector<std::pair<int, int>> entries;
            for (std::size_t e = 0; e < choice.elements.size(); ++e)
                entries.emplace_back(names[static_cast<std::size_t>(choice.elements[e])],
                                     choice.ranks[e]);
            std::sort(entries.begin(), entries.end());
            make::Choice renamed{{}, {}, choice.resource};
            for (const auto& [element, rank] : entries) {
                renamed.elements.push_back(element);
                renamed.ranks.push_back(rank);
            }
            other.choices.push_back(std::move(renamed));
        }
        CAPTURE(i);
        const auto one = cover_of(problem);
        REQUIRE(one.proven);
        // Renamed elements leave the very same choices the best.
        CHECK(cover_of(other).chosen == one.chosen);
        std::shuffle(other.choices.begin(), other.choices.end(), chance);
        const auto two = cover_of(other);
        const auto worth = worth_of(problem, one.chosen);
        const auto shuffled = worth_of(other, two.chosen);
        CHECK(shuffled.covered == worth.covered);
        CHECK(shuffled.count == worth.count);
        CHECK(shuffled.total == worth.total);
    }
}

TEST_CASE("without any one of the chosen something is left uncovered") {
    Chance chance(4);
    for (int i = 0; i < cases::some(100); ++i) {
        const auto problem = at_random(chance, {30, 80, 6, 3, 0, 0});
        const auto cover = cover_of(problem);
        const auto worth = worth_of(problem, cover.chosen);
        for (std::size_t c = 0; c < cover.chosen.size(); ++c) {
            auto rest = cover.chosen;
            rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(c));
            CHECK(worth_of(problem, rest).covered < worth.covered);
        }
    }
}

TEST_CASE("a shop's largest list is proven in well under a second") {
    Chance chance(5);
    for (const int bodies : {60, 150, 300, 500, 500}) {
        const auto problem = cover_cases::like_a_shop(chance, 200, bodies);
        const auto start = std::clock();
        const auto cover = cover_of(problem);
        const double took = seconds_since(start);
        CAPTURE(bodies);
        MESSAGE(problem.choices.size(), " choices, ", cover.chosen.size(), " chosen, bound ",
                cover.bound, ", ", took, " s");
        CHECK(cover.proven);
        CHECK(took < k_second);
    }
}

TEST_CASE("a hard case stops by itself, the same each time, with a bound") {
    Chance chance(6);
    const auto problem = at_random(chance, {200, 3000, 8, 3, 0, 0});
    const auto start = std::clock();
    const auto cover = cover_of(problem, 200'000);
    const double took = seconds_since(start);
    MESSAGE(cover.chosen.size(), " chosen, bound ", cover.bound, ", ", took, " s");
    CHECK_FALSE(cover.proven);
    CHECK(worth_of(problem, cover.chosen).covered == 200);
    CHECK(cover.bound <= static_cast<int>(cover.chosen.size()));
    // No choice has more than eight elements.
    CHECK(cover.bound >= 25);
    CHECK(took < 5 * k_second);
    CHECK(cover_of(problem, 200'000).chosen == cover.chosen);
}
