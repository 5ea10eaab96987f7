// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Speeds by the cutter's steel and the pilot's own, and the drilling that goes first.
#include <doctest/doctest.h>

#include "job/run.hpp"
#include "job/steps.hpp"
#include "length/print.hpp"
#include "store/reference.hpp"
#include "trade/conversion.hpp"
#include "trade/material.hpp"

using job::Measure;
using job::Steel;
using length::sixty_fourths;

namespace {

trade::Material material(const char* name) {
    static const store::Reference tables;
    return trade::find_material(name, tables.materials());
}

double feet(const job::Figure& figure, double Measure::*end) {
    return std::get<Measure>(figure.value).*end / trade::k_metres_in_foot;
}

} // namespace

TEST_CASE("a cutter's steel is known by the words it is recorded with") {
    for (const char* words : {"high-speed steel", "HSS", "HSS-E", "cobalt", "M2 steel"})
        CHECK(job::steel_of(words) == Steel::high_speed);
    for (const char* words : {"carbon steel", "silver steel", "W1", "tool steel (O1)"})
        CHECK(job::steel_of(words) == Steel::carbon);
    CHECK(job::steel_of("carbide") == Steel::carbide);
    CHECK(job::steel_of("carbide tipped, carbon steel shank") == Steel::carbide);
    for (const char* words : {"", "steel", "M20", "unknown"})
        CHECK(job::steel_of(words) == Steel::unknown);
}

TEST_CASE("carbon steel runs at half of high-speed steel's speed") {
    // US Navy NAVEDTRA 14345: carbon steel drills at one half of these speeds.
    const auto steel = material("1018");
    const auto fast = job::surface_speeds(steel, Steel::high_speed);
    const auto slow = job::surface_speeds(steel, Steel::carbon);
    REQUIRE(fast.size() == 1);
    REQUIRE(slow.size() == 1);
    CHECK(feet(slow[0], &Measure::lo) == doctest::Approx(feet(fast[0], &Measure::lo) * .5));
    CHECK(feet(slow[0], &Measure::hi) == doctest::Approx(feet(fast[0], &Measure::hi) * .5));
    CHECK(job::steel_words(Steel::high_speed).empty());
    CHECK(job::steel_words(Steel::carbide).find("carbide") == 0);
}

TEST_CASE("what nobody recorded has both speeds, the lower one first") {
    const auto both = job::surface_speeds(material("1018"), Steel::unknown);
    REQUIRE(both.size() == 2);
    CHECK(feet(both[0], &Measure::hi) < feet(both[1], &Measure::hi));
    CHECK(job::turns(both[0], length::exactly(sixty_fourths(32))).name ==
          "spindle speed, carbon steel");
}

TEST_CASE("a spindle turns as in published examples") {
    // A shop page's worked example: 80 ft/min, 1/2 in, 611 rpm.
    const job::Figure speed{"surface speed",
                            Measure{job::Kind::surface_speed, 80 * trade::k_metres_in_foot,
                                    80 * trade::k_metres_in_foot},
                            "",
                            {},
                            ""};
    const auto turning = job::turns(speed, length::exactly(sixty_fourths(32)));
    CHECK(std::get<Measure>(turning.value).lo == doctest::Approx(611).epsilon(.001));
}

TEST_CASE("drilling speeds are those of a reamer maker's table") {
    // High-speed steel drilling table of a reamer maker, ft/min.
    CHECK(material("medium-carbon steel 1045 (C45)").drill_speed == 75);
    CHECK(material("304").drill_speed == 55);
    CHECK(material("ductile iron 60-40-18").drill_speed == 100);
    CHECK(material("O1").drill_speed == 45);
}

TEST_CASE("a pilot is held to 65 ft/min of its own surface") {
    // Common practice, no source. 12 x 65 / (pi x .5) = 496.6.
    const auto most = job::pilot_turns(length::exactly(sixty_fourths(32)));
    CHECK(std::get<Measure>(most.value).hi == doctest::Approx(496.6).epsilon(.001));
}

TEST_CASE("a drill over 1/2 in has a drill for its web before it") {
    // Common practice, no source.
    const auto first = [](int count) {
        return job::pilot_drill({"x", trade::DrillKind::fraction, sixty_fourths(count)});
    };
    CHECK(first(21).empty());
    CHECK(first(32).empty());
    CHECK(first(33) == "3/32");
    CHECK(first(48) == "1/8");
    CHECK(first(64) == "5/32");
    CHECK(job::pilot_drill({"17.5 mm", trade::DrillKind::metric, length::micrometres(17'500)}) ==
          "3 mm");
}
