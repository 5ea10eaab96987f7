// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The constants that shops use, and what cannot be.
#include <doctest/doctest.h>

#include <string>

#include "error/error.hpp"
#include "job/gauge.hpp"
#include "length/print.hpp"

using length::inches_e5;
using length::Length;
using length::Range;
using length::thousandths;
using length::Unit;

namespace {

const Length k_inch = thousandths(1000);

Range about(Length value, Length within) {
    return {value - within, value + within};
}

double inches(Length value) {
    return static_cast<double>(value.nm()) / length::k_nm_per_inch;
}

double number_named(const job::Gauged& gauged, const std::string& name) {
    for (const auto& figure : gauged.figures)
        if (figure.name == name)
            return std::get<job::Measure>(figure.value).lo;
    return -1;
}

template <class Gauge>
std::string refusal(Gauge gauge) {
    try {
        (void)gauge();
    } catch (const error::BadData& problem) {
        return std::string(problem.what()) + "\n" + problem.hint();
    }
    return "not refused";
}

} // namespace

TEST_CASE("jaws on sharp lands give the usual shares of the diameter") {
    // (1 + cos(180/n))/2 and cos(90/n): three, five and seven flutes.
    struct {
        int flutes;
        double least;
        double most;
    } const rows[] = {{3, .7500, .8660}, {5, .9045, .9511}, {7, .9505, .9749}};
    for (const auto& row : rows) {
        const auto least =
            job::gauge_jaws({row.flutes, length::exactly(k_inch), std::nullopt}, Unit::inch);
        CHECK(least.diameter->lo == k_inch);
        CHECK(1 / inches(least.diameter->hi) == doctest::Approx(row.least).epsilon(1e-4));
        const auto most =
            job::gauge_jaws({row.flutes, std::nullopt, length::exactly(k_inch)}, Unit::inch);
        CHECK(most.diameter->lo == k_inch);
        CHECK(1 / inches(most.diameter->hi) == doctest::Approx(row.most).epsilon(1e-4));
    }
}

TEST_CASE("wide lands read more between the jaws, and the land angle is found") {
    // Smallest reading over three flutes: (1 + cos(60 - w/2))/2 of the diameter for a land angle w
    // of 10 and 20 degrees; largest: cos(30 - w/2).
    struct {
        double least;
        double most;
        double land;
    } const rows[] = {{.78679, .90631, 10}, {.82139, .93969, 20}};
    for (const auto& row : rows) {
        const auto reading = [](double share) {
            return length::exactly(inches_e5(static_cast<std::int64_t>(share * 1e5 + .5)));
        };
        const auto gauged = job::gauge_jaws({3, reading(row.least), reading(row.most)}, Unit::inch);
        CHECK(inches(gauged.diameter->lo) == doctest::Approx(1).epsilon(2e-4));
        CHECK(inches(gauged.diameter->hi) == doctest::Approx(1).epsilon(2e-4));
        CHECK(number_named(gauged, "land angle") == doctest::Approx(row.land).epsilon(2e-2));
    }
}

TEST_CASE("jaws read an even number of flutes directly") {
    const Range reading = about(k_inch, thousandths(1));
    CHECK(job::gauge_jaws({4, std::nullopt, reading}, Unit::inch).diameter == reading);
    CHECK(job::gauge_jaws({2, std::nullopt, reading}, Unit::inch).diameter == reading);
}

TEST_CASE("a chord gives the diameter by the usual factors") {
    // 2/sqrt 3 for three flutes; 1/sin 36 and 1/sin 72 for five.
    struct {
        int flutes;
        int skipped;
        double factor;
    } const rows[] = {{3, 0, 1.15470}, {5, 0, 1.70130}, {5, 1, 1.05146}, {2, 0, 1}, {4, 1, 1}};
    for (const auto& row : rows) {
        const Range chord = about(k_inch, thousandths(1));
        const auto gauged = job::gauge_chord({row.flutes, row.skipped, chord});
        CHECK(inches(gauged.diameter->lo) == doctest::Approx(row.factor * .999).epsilon(1e-5));
        CHECK(inches(gauged.diameter->hi) == doctest::Approx(row.factor * 1.001).epsilon(1e-5));
        CHECK(number_named(gauged, "error amplification") ==
              doctest::Approx(row.factor).epsilon(1e-5));
    }
}

TEST_CASE("a V that suits the flutes gives the diameter from a master") {
    // 60 degrees and three flutes: D = Dm + (2/3)(S - Sm); 108 and five: .89443.
    struct {
        int flutes;
        double angle;
        double factor;
    } const rows[] = {{3, 60, 2.0 / 3}, {5, 108, .89443}};
    for (const auto& row : rows) {
        const job::Master master{length::exactly(thousandths(500)),
                                 length::exactly(thousandths(750))};
        const auto gauged = job::gauge_anvil(
            {row.flutes, row.angle, length::exactly(thousandths(650)), master}, Unit::inch);
        CHECK(inches(gauged.diameter->lo) == doctest::Approx(.5 - .1 * row.factor).epsilon(1e-5));
        CHECK(gauged.diameter->hi - gauged.diameter->lo <= Length::from_nm(2));
        CHECK(gauged.notes.empty());
        CHECK(job::suited_anvil_angle(row.flutes) == doctest::Approx(row.angle));
    }
}

TEST_CASE("a V that does not suit the flutes reads them low by the known share") {
    // Five sharp flutes stand 1.41355 D over the apex of a 60 degree V, a plug 1.5 D: the
    // micrometer shows .9424 D. Three in a 90 degree V: 1.18301 D, a plug 1.20711 D.
    struct {
        int flutes;
        double angle;
        double shown;
    } const rows[] = {{5, 60, 1.41355 / 1.5}, {3, 90, 1.18301 / 1.20711}};
    for (const auto& row : rows) {
        const auto gauged = job::gauge_anvil(
            {row.flutes, row.angle, length::exactly(k_inch), std::nullopt}, Unit::inch);
        CHECK(gauged.diameter->lo == k_inch);
        CHECK(1 / inches(gauged.diameter->hi) == doctest::Approx(row.shown).epsilon(1e-5));
        CHECK(gauged.notes.size() == 1);
    }
    CHECK(rows[0].shown == doctest::Approx(.9424).epsilon(1e-4));
}

TEST_CASE("over a pilot the diameter is twice the reading less the pilot") {
    const auto gauged =
        job::gauge_over_pilot({about(thousandths(250), thousandths(1)),
                               about(thousandths(375), thousandths(2)), thousandths(3)},
                              Unit::inch);
    CHECK(gauged.diameter == about(thousandths(500), thousandths(8)));
    CHECK(gauged.notes.empty());
    const auto concentric = job::gauge_over_pilot(
        {about(thousandths(250), thousandths(1)), about(thousandths(375), thousandths(2)), {}},
        Unit::inch);
    CHECK_FALSE(concentric.diameter);
    CHECK(concentric.figures.front().name == "cutting diameter if concentric");
    CHECK(std::get<Range>(concentric.figures.front().value) ==
          about(thousandths(500), thousandths(5)));
    CHECK(concentric.notes.size() == 1);
}

TEST_CASE("a hole bounds the cutter from above, and with its allowances from below") {
    const Range hole = about(thousandths(440), thousandths(1));
    const auto bound = job::gauge_hole({hole, thousandths(2), {}}, Unit::inch);
    CHECK_FALSE(bound.diameter);
    CHECK(bound.figures.front().name == "cutting diameter at most");
    CHECK(std::get<Range>(bound.figures.front().value) == length::exactly(thousandths(441)));
    CHECK(bound.notes.size() == 1);
    const auto both = job::gauge_hole({hole, thousandths(2), Length()}, Unit::inch);
    CHECK(both.diameter == Range{thousandths(437), thousandths(441)});
}

TEST_CASE("readings that no cutter gives are refused with what would be possible") {
    const auto jaws = [](int flutes, int least, int most) {
        return refusal([=] {
            return job::gauge_jaws({flutes, about(thousandths(least), thousandths(1)),
                                    about(thousandths(most), thousandths(1))},
                                   Unit::inch);
        });
    };
    CHECK(jaws(3, 433, 375) ==
          "the largest reading is under the smallest, .432 to .434 in: .374 to .376 in\n"
          "the largest is 1 to 1.1547 times the smallest, here .432 to .5011 in; turn the tool "
          "slowly and read both again");
    CHECK(jaws(3, 375, 440)
              .rfind("the largest reading is too far over the smallest of 3 flutes, "
                     ".374 to .376 in: .439 to .441 in\n",
                     0) == 0);
    CHECK(jaws(3, 375, 434) == "not refused");
    CHECK(jaws(3, 375, 373) == "not refused"); // both may be .374
    CHECK(jaws(2, 375, 434).rfind("the smallest reading of two flutes", 0) == 0);
    CHECK(jaws(1, 375, 434) == "too few flutes: 1\nat least 2");
    CHECK(refusal([] {
              return job::gauge_jaws({3, {}, {}}, Unit::inch);
          }).rfind("no reading", 0) == 0);
    CHECK(refusal([] {
              return job::gauge_chord({5, 4, length::exactly(thousandths(412))});
          }) == "5 flutes have no corner after skipping 4\nskip 0 to 3");
    CHECK(refusal([] {
              return job::gauge_anvil({3, 175, length::exactly(thousandths(412)), {}}, Unit::inch);
          }) == "no angle of a V: 175\nfrom 10 to 170 degrees between its faces");
    CHECK(
        refusal([] {
            const job::Master master{length::exactly(thousandths(500)),
                                     length::exactly(thousandths(900))};
            return job::gauge_anvil({3, 60, length::exactly(thousandths(100)), master}, Unit::inch);
        }) == "the reading is too far under the master's: .100 in and .900 in\n"
              "less than .750 in under it, which is the apex of the V");
    CHECK(refusal([] {
              return job::gauge_over_pilot({about(thousandths(250), thousandths(1)),
                                            about(thousandths(248), thousandths(1)),
                                            {}},
                                           Unit::inch);
          }).rfind("the reading is not over the pilot: .247 to .249 in and .249 to .251 in", 0) ==
          0);
    CHECK(refusal([] {
              return job::gauge_over_pilot({length::exactly(thousandths(250)),
                                            length::exactly(thousandths(255)), thousandths(300)},
                                           Unit::inch);
          }).rfind("the runout leaves nothing of the cutter: .300 in", 0) == 0);
    CHECK(refusal([] {
              return job::gauge_hole(
                  {length::exactly(thousandths(400)), thousandths(300), thousandths(100)},
                  Unit::inch);
          }).rfind("runout and clearance leave nothing of the hole", 0) == 0);
}
