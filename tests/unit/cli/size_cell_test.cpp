// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/record/size_cell.hpp"

#include <doctest/doctest.h>

#include "error/error.hpp"
#include "store/reference.hpp"

using namespace cli::record;
using length::Unit;
using trade::Feature;
using trade::How;

namespace {

trade::Practice usual_practice() {
    return trade::read_practice(store::Reference().practice());
}

} // namespace

TEST_CASE("a bare number in another unit than the catalogue's gets its unit") {
    const trade::Practice practice = usual_practice();
    const Reading in_mm{Unit::millimetre, Unit::inch, &practice, nullptr};
    CHECK(with_stored_unit("11", in_mm) == "11 mm");
    CHECK(with_stored_unit(" 11.5 ", in_mm) == "11.5 mm");
    CHECK(with_stored_unit("11 +-.1", in_mm) == "11 mm +-.1");
    CHECK(with_stored_unit("11 +.1 -.2", in_mm) == "11 mm +.1 -.2");
    CHECK(with_stored_unit("go 20 no-go 21", in_mm) == "go 20 mm no-go 21");
    CHECK(with_stored_unit("3/8", in_mm) == "3/8");
    CHECK(with_stored_unit(".375 in", in_mm) == ".375 in");
    CHECK(with_stored_unit("10 mm", in_mm) == "10 mm");
    const Reading in_inches{Unit::inch, Unit::millimetre, &practice, nullptr};
    CHECK(with_stored_unit(".375", in_inches) == ".375 in");
    CHECK(with_stored_unit(".375 +-.001", in_inches) == ".375 in +-.001");
    const Reading plain{Unit::inch, Unit::inch, &practice, nullptr};
    CHECK(with_stored_unit(".375", plain) == ".375");
}

TEST_CASE("a size means the same after its unit was written to it") {
    const trade::Practice practice = usual_practice();
    for (const std::string text : {"11", "11 +-.1", "11 +.1 -.2", "11 -.2 +.1", "go 20 no-go 21",
                                   "3/8", "11 +- .1 mm", "11 +.1 -.002 in"}) {
        for (const Unit bare : {Unit::inch, Unit::millimetre}) {
            CAPTURE(text);
            const Unit stored = bare == Unit::inch ? Unit::millimetre : Unit::inch;
            const length::Reading meant = length::parse_reading(text, bare);
            const length::Reading kept = length::parse_reading(
                with_stored_unit(text, {bare, stored, &practice, nullptr}), stored);
            CHECK(kept.nominal.value == meant.nominal.value);
            CHECK(kept.limits == meant.limits);
        }
    }
}

TEST_CASE("a size whose way of measuring has no column keeps its range through a file") {
    const trade::Practice practice = usual_practice();
    for (const Unit stored : {Unit::inch, Unit::millimetre}) {
        const Reading reading{stored, stored, &practice, nullptr};
        for (const How how : {How::unstated, How::mark, How::rule, How::caliper, How::micrometer,
                              How::pin_gauge, How::test_hole, How::guess}) {
            for (const std::string text : {".75", "3/4", "19 mm", ".75 +-.002", "1/32", "1 mm"}) {
                CAPTURE(text);
                const trade::Dimension there = read_size(text, how, Feature::bore_depth, reading);
                const std::string cell = size_with_limits(there, stored);
                CAPTURE(cell);
                const trade::Dimension back =
                    read_size(cell, How::unstated, Feature::bore_depth, reading);
                CHECK(back.range == there.range);
                CHECK(size_with_limits(back, stored) == cell);
            }
        }
    }
}

TEST_CASE("a drill's name has no unit and goes through any catalogue as it is written") {
    const trade::Practice practice = usual_practice();
    const store::Reference tables;
    for (const Unit bare : {Unit::inch, Unit::millimetre})
        for (const Unit stored : {Unit::inch, Unit::millimetre}) {
            const Reading reading{bare, stored, &practice, &tables};
            CHECK(with_stored_unit(" letter F ", reading) == "letter F");
            const auto pilot = read_size("#7", How::unstated, Feature::pilot_dia, reading);
            CHECK(pilot.text == "#7");
            CHECK(read_stored_size(pilot.text, pilot.how, Feature::pilot_dia, reading) == pilot);
        }
}

TEST_CASE("only a pilot is marked with a drill") {
    const trade::Practice practice = usual_practice();
    const store::Reference tables;
    const Reading reading{Unit::inch, Unit::inch, &practice, &tables};
    for (const Feature feature : {Feature::cut_dia, Feature::bore, Feature::pilot_length})
        CHECK_THROWS_AS(static_cast<void>(read_size("F", How::mark, feature, reading)),
                        error::BadData);
    CHECK_THROWS_AS(static_cast<void>(read_size("#10-32", How::mark, Feature::pilot_dia, reading)),
                    error::BadData);
}

// Every number and letter drill of ASME B94.11M that a pilot can be made for, through a cell and
// back; the diameters are checked in tests/reference.
TEST_CASE("a pilot marked with any drill of the tables is .001 to .004 under it") {
    const trade::Practice practice = usual_practice();
    const store::Reference tables;
    const Reading reading{Unit::inch, Unit::inch, &practice, &tables};
    int pilots = 0;
    for (const auto kind : {trade::DrillKind::number, trade::DrillKind::letter})
        for (const trade::Drill& drill : tables.drills(kind)) {
            if (drill.diameter < length::thousandths(20))
                continue;
            const auto pilot = read_size(drill.name, How::unstated, Feature::pilot_dia, reading);
            CHECK(pilot.range == length::Range{drill.diameter - length::thousandths(4),
                                               drill.diameter - length::thousandths(1)});
            ++pilots;
        }
    CHECK(pilots == 76 + 26); // #1 to #76, A to Z
    const auto hole = [&](const char* name) {
        return read_size(name, How::mark, Feature::pilot_dia, reading).range.hi +
               length::thousandths(1);
    };
    // ASME B94.11M, from memory.
    CHECK(hole("#1") == length::inches_e5(22800));
    CHECK(hole("#7") == length::inches_e5(20100));
    CHECK(hole("#10") == length::inches_e5(19350));
    CHECK(hole("#30") == length::inches_e5(12850));
    CHECK(hole("F") == length::inches_e5(25700));
    CHECK(hole("Q") == length::inches_e5(33200));
    CHECK(hole("Z") == length::inches_e5(41300));
}

TEST_CASE("how a value was taken goes by the way it is written") {
    CHECK(how_taken("", ".257", Unit::inch) == How::caliper);
    CHECK(how_taken("", "17/64", Unit::inch) == How::rule);
    CHECK(how_taken("", ".257 +-.001", Unit::inch) == How::unstated);
    CHECK(how_taken("", "F", Unit::inch) == How::unstated);
    CHECK(how_taken("micrometer", "F", Unit::inch) == How::micrometer);
}

TEST_CASE("limits that are there already are not written twice") {
    const trade::Practice practice = usual_practice();
    const Reading reading{Unit::inch, Unit::inch, &practice, nullptr};
    CHECK(size_with_limits(read_size(".75", How::caliper, Feature::reach, reading), Unit::inch) ==
          ".75 +-.001 in");
    CHECK(size_with_limits(read_size(".75 +-.003", How::caliper, Feature::reach, reading),
                           Unit::inch) == ".75 +-.003");
    CHECK(size_with_limits(read_size(".75", How::unstated, Feature::reach, reading), Unit::inch) ==
          ".75");
}
