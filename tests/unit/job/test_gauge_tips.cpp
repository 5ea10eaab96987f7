// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Every way of gauging against points on a circle that are measured point by point.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <vector>

#include "job/gauge.hpp"
#include "tips.hpp"

using length::Length;
using length::Range;
using length::Unit;

namespace {

constexpr double k_inch = length::k_nm_per_inch;
constexpr double k_lands[] = {0, 2, 5, 10, 20, 30, 45, 70, 100, 150};
constexpr int k_diameters = 12;

double uniform(double lo, double hi, std::mt19937& random) {
    return std::uniform_real_distribution<double>(lo, hi)(random);
}

double any_diameter(std::mt19937& random) {
    return std::floor(uniform(.1 * k_inch, 2.5 * k_inch, random));
}

double sine_of_half(double angle) {
    return std::sin(angle * std::numbers::pi / 360);
}

bool holds(const Range& range, double value, double within) {
    return static_cast<double>(range.lo.nm()) <= value + within &&
           static_cast<double>(range.hi.nm()) >= value - within;
}

double width(const Range& range) {
    return static_cast<double>((range.hi - range.lo).nm());
}

const job::Measure& land_of(const job::Gauged& gauged) {
    return std::get<job::Measure>(gauged.figures.at(1).value);
}

// What jaws read of a cutter of diameter 1 at every land angle from sharp to a full circle.
struct ByLand {
    double land;
    tips::Jaws jaws;
};
// In 200 steps, and in between as on a straight line; the steps and points are closer where lands
// are narrow, for there a little in the readings is much in the diameter.
std::vector<ByLand> all_lands(int flutes) {
    constexpr int k_steps = 200;
    constexpr int k_between = 64;
    std::vector<ByLand> table;
    for (int i = 0; i <= k_steps; ++i) {
        const double land = 360.0 / flutes * i * i / (k_steps * k_steps);
        const int points = i == 0 ? 1 : 2 + static_cast<int>(land / (land < 15 ? .1 : .6));
        const ByLand row{land, tips::between_jaws(tips::cutter(flutes, 1, land, points))};
        const ByLand before = table.empty() ? row : table.back();
        for (int j = 1; j < k_between; ++j) {
            const auto between = [&](double from, double to) {
                return from + (to - from) * j / k_between;
            };
            table.push_back({between(before.land, row.land),
                             {between(before.jaws.least, row.jaws.least),
                              between(before.jaws.most, row.jaws.most)}});
        }
        table.push_back(row);
    }
    return table;
}

// The diameters that two readings allow, land angle by land angle.
struct Allowed {
    double lo = HUGE_VAL;
    double hi = 0;
};
Allowed allowed(const std::vector<ByLand>& table, const Range& least, const Range& most) {
    Allowed result;
    for (const auto& row : table) {
        const double lo = std::max(static_cast<double>(least.lo.nm()) / row.jaws.least,
                                   static_cast<double>(most.lo.nm()) / row.jaws.most);
        const double hi = std::min(static_cast<double>(least.hi.nm()) / row.jaws.least,
                                   static_cast<double>(most.hi.nm()) / row.jaws.most);
        if (lo > hi)
            continue;
        result.lo = std::min(result.lo, lo);
        result.hi = std::max(result.hi, hi);
    }
    return result;
}

} // namespace

TEST_CASE("jaws: the true diameter and land angle are in the range") {
    std::mt19937 random(1);
    for (int flutes = 3; flutes <= 9; ++flutes)
        for (const double land : k_lands) {
            if (land > 360.0 / flutes)
                continue;
            const auto jaws = tips::between_jaws(tips::cutter(flutes, 1, land, 201));
            for (int i = 0; i < k_diameters; ++i) {
                const double diameter = any_diameter(random);
                const double error = uniform(50'000, 60'000, random); // .002 in
                const Range least = tips::reading_of(jaws.least * diameter, error, random);
                const Range most = tips::reading_of(jaws.most * diameter, error, random);
                CAPTURE(flutes);
                CAPTURE(land);
                CAPTURE(diameter);
                const auto both = job::gauge_jaws({flutes, least, most}, Unit::inch);
                CHECK(holds(*both.diameter, diameter, 0));
                CHECK(land_of(both).lo <= land + 1e-6);
                CHECK(land_of(both).hi >= land - 1e-6);
                const auto one = job::gauge_jaws({flutes, least, {}}, Unit::inch);
                CHECK(holds(*one.diameter, diameter, 0));
                const auto other = job::gauge_jaws({flutes, {}, most}, Unit::inch);
                CHECK(holds(*other.diameter, diameter, 0));
                CHECK(both.diameter->lo >= std::max(one.diameter->lo, other.diameter->lo));
                CHECK(both.diameter->hi <= std::min(one.diameter->hi, other.diameter->hi));
            }
        }
}

TEST_CASE("jaws: the range is no wider than the readings allow") {
    std::mt19937 random(2);
    for (int flutes = 3; flutes <= 9; ++flutes) {
        const auto table = all_lands(flutes);
        for (int i = 0; i < 200; ++i) {
            const auto& row = table[random() % table.size()];
            const double diameter = any_diameter(random);
            const double error = uniform(10'000, 60'000, random);
            const Range least = tips::reading_of(row.jaws.least * diameter, error, random);
            const Range most = tips::reading_of(row.jaws.most * diameter, error, random);
            const auto range = *job::gauge_jaws({flutes, least, most}, Unit::inch).diameter;
            const auto truth = allowed(table, least, most);
            CAPTURE(flutes);
            CAPTURE(row.land);
            CAPTURE(diameter);
            const double polygon = 1e-4 * diameter; // points instead of arcs
            const double grid = 2e-4 * diameter;    // from one row of the table to the next
            CHECK(static_cast<double>(range.lo.nm()) <= truth.lo + polygon);
            CHECK(static_cast<double>(range.lo.nm()) >= truth.lo - grid);
            CHECK(static_cast<double>(range.hi.nm()) >= truth.hi - polygon);
            CHECK(static_cast<double>(range.hi.nm()) <= truth.hi + grid);
        }
    }
}

TEST_CASE("jaws: without error a cutter with lands is found to nanometres") {
    for (const int flutes : {3, 5, 7, 9}) {
        // From half the spacing the largest reading is the diameter.
        const double land = 180.0 / flutes;
        const double diameter = 12'700'000;
        const auto jaws = tips::between_jaws(tips::cutter(flutes, diameter, land, 1201));
        const auto gauged = job::gauge_jaws(
            {flutes, tips::exact_reading(jaws.least), tips::exact_reading(jaws.most)}, Unit::inch);
        CAPTURE(flutes);
        CHECK(holds(*gauged.diameter, diameter, 1));
        CHECK(width(*gauged.diameter) <= 20);
        // A narrower land tells less.
        const auto narrow = tips::between_jaws(tips::cutter(flutes, diameter, land / 3, 1201));
        const auto wider = job::gauge_jaws(
            {flutes, tips::exact_reading(narrow.least), tips::exact_reading(narrow.most)},
            Unit::inch);
        CHECK(holds(*wider.diameter, diameter, 1));
        CHECK(width(*wider.diameter) <= 100);
    }
}

TEST_CASE("jaws: an even number of flutes reads true at the largest") {
    std::mt19937 random(3);
    for (int flutes = 2; flutes <= 8; flutes += 2)
        for (const double land : {0.0, 5.0, 20.0}) {
            const double diameter = any_diameter(random);
            const auto jaws = tips::between_jaws(tips::cutter(flutes, diameter, land, 201));
            const auto gauged =
                job::gauge_jaws({flutes, {}, tips::exact_reading(jaws.most)}, Unit::inch);
            CHECK(holds(*gauged.diameter, diameter, 1));
            CHECK(width(*gauged.diameter) <= 2);
        }
}

TEST_CASE("chord: the true diameter is in the range, whatever the land") {
    std::mt19937 random(4);
    for (int flutes = 2; flutes <= 9; ++flutes)
        for (int skipped = 0; skipped <= flutes - 2; ++skipped)
            for (int i = 0; i < k_diameters; ++i) {
                const double diameter = any_diameter(random);
                const auto points = tips::cutter(flutes, diameter, 7, 2);
                const std::size_t other = 2 * (static_cast<std::size_t>(skipped) + 1);
                const double chord = std::abs(points.at(0) - points.at(other));
                const double error = 25'400;
                const auto gauged =
                    job::gauge_chord({flutes, skipped, tips::reading_of(chord, error, random)});
                CHECK(holds(*gauged.diameter, diameter, 0));
                const double times = std::get<job::Measure>(gauged.figures.at(1).value).lo;
                CHECK(width(*gauged.diameter) <= times * (error + 2) + 2);
                const auto exact = job::gauge_chord({flutes, skipped, tips::exact_reading(chord)});
                CHECK(holds(*exact.diameter, diameter, 1e-6));
                CHECK(width(*exact.diameter) <= times + 2);
            }
}

TEST_CASE("anvil: the true diameter is in the range, whatever the V and the land") {
    std::mt19937 random(5);
    for (int flutes = 2; flutes <= 9; ++flutes)
        for (const double angle : {60.0, 90.0, 108.0, 120.0, uniform(20, 160, random)})
            for (const double land : {0.0, 6.0, 18.0, 360.0 / flutes}) {
                const double diameter = any_diameter(random);
                const auto points = tips::cutter(flutes, diameter, land, land > 0 ? 31 : 1);
                const double height = tips::in_anvil(points, angle);
                const double plug = uniform(.1 * k_inch, 2 * k_inch, random);
                const double plug_height = plug / 2 * (1 + 1 / sine_of_half(angle));
                const double zero = uniform(0, k_inch, random) - std::min(height, plug_height);
                const job::Master master{tips::reading_of(plug, 5'000, random),
                                         tips::reading_of(plug_height + zero, 20'000, random)};
                CAPTURE(flutes);
                CAPTURE(angle);
                CAPTURE(land);
                const auto gauged = job::gauge_anvil(
                    {flutes, angle, tips::reading_of(height + zero, 20'000, random), master},
                    Unit::inch);
                CHECK(holds(*gauged.diameter, diameter, diameter * 1e-6));
            }
}

TEST_CASE("anvil: the upper bound is for sharp lands, the lower for a round piece") {
    std::mt19937 random(6);
    for (int flutes = 2; flutes <= 9; ++flutes)
        for (int i = 0; i < 10; ++i) {
            const double angle = uniform(20, 160, random);
            const double diameter = any_diameter(random);
            const double height = tips::in_anvil(tips::cutter(flutes, diameter, 0, 1), angle);
            const double round = (1 + 1 / sine_of_half(angle)) / 2;
            const auto gauged = job::gauge_anvil(
                {flutes, angle, tips::exact_reading(height / round), std::nullopt}, Unit::inch);
            CAPTURE(flutes);
            CAPTURE(angle);
            CHECK(std::abs(static_cast<double>(gauged.diameter->hi.nm()) - diameter) <= 5);
            CHECK(std::abs(static_cast<double>(gauged.diameter->lo.nm()) - height / round) <= 2);
        }
}

TEST_CASE("anvil: a suited V gives the diameter to nanometres") {
    std::mt19937 random(7);
    for (const int flutes : {3, 5, 6, 7, 8, 9}) {
        const auto angle = job::suited_anvil_angle(flutes);
        REQUIRE(angle);
        const double diameter = any_diameter(random);
        const double round = (1 + 1 / sine_of_half(*angle)) / 2;
        const double height = tips::in_anvil(tips::cutter(flutes, diameter, 0, 1), *angle);
        const auto gauged = job::gauge_anvil(
            {flutes, *angle, tips::exact_reading(height / round), std::nullopt}, Unit::inch);
        CHECK(holds(*gauged.diameter, diameter, 2));
        CHECK(width(*gauged.diameter) <= 3);
        CHECK(gauged.notes.empty());
    }
    CHECK_FALSE(job::suited_anvil_angle(2));
    CHECK_FALSE(job::suited_anvil_angle(4));
}

TEST_CASE("pilot: the true diameter is in the range, however the pilot runs out") {
    std::mt19937 random(8);
    for (int i = 0; i < 2000; ++i) {
        const double diameter = any_diameter(random);
        const double pilot = diameter * uniform(.3, .9, random);
        const double runout = uniform(0, 100'000, random);
        const tips::Point centre = std::polar(runout / 2, uniform(0, 6.3, random));
        const double reading = std::abs(tips::Point(diameter / 2) - centre) + pilot / 2;
        const Range pilot_range = tips::reading_of(pilot, 10'000, random);
        const Range reading_range = tips::reading_of(reading, 50'000, random);
        const Length most = Length::from_nm(static_cast<std::int64_t>(std::ceil(runout)));
        const auto gauged = job::gauge_over_pilot({pilot_range, reading_range, most}, Unit::inch);
        CHECK(holds(*gauged.diameter, diameter, 0));
        CHECK(width(*gauged.diameter) ==
              width(pilot_range) + 2 * width(reading_range) + 2 * static_cast<double>(most.nm()));
    }
}

TEST_CASE("hole: the true diameter is in the range, however the cutter wanders") {
    std::mt19937 random(9);
    for (int i = 0; i < 2000; ++i) {
        const double diameter = any_diameter(random);
        const double runout = uniform(0, 100'000, random);
        const double clearance = uniform(0, 100'000, random);
        // The tips about an axis off the pilot's, the pilot's off the hole's, turning.
        const double off = uniform(0, runout / 2, random);
        const double shift = uniform(0, clearance / 2, random);
        const double hole = 2 * (diameter / 2 + off + shift);
        const Range hole_range = tips::reading_of(hole, 20'000, random);
        const auto up = [](double value) {
            return Length::from_nm(static_cast<std::int64_t>(std::ceil(value)));
        };
        const auto gauged = job::gauge_hole({hole_range, up(runout), up(clearance)}, Unit::inch);
        CHECK(holds(*gauged.diameter, diameter, 0));
        CHECK(width(*gauged.diameter) ==
              width(hole_range) + static_cast<double>((up(runout) + up(clearance)).nm()));
        CHECK(
            std::get<Range>(job::gauge_hole({hole_range, {}, {}}, Unit::inch).figures.front().value)
                .hi == hole_range.hi);
    }
}
