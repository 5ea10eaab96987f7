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
    const Reading in_mm{Unit::millimetre, Unit::inch, &practice};
    CHECK(with_stored_unit("11", in_mm) == "11 mm");
    CHECK(with_stored_unit(" 11.5 ", in_mm) == "11.5 mm");
    CHECK(with_stored_unit("11 +-.1", in_mm) == "11 mm +-.1");
    CHECK(with_stored_unit("11 +.1 -.2", in_mm) == "11 mm +.1 -.2");
    CHECK(with_stored_unit("go 20 no-go 21", in_mm) == "go 20 mm no-go 21");
    CHECK(with_stored_unit("3/8", in_mm) == "3/8");
    CHECK(with_stored_unit(".375 in", in_mm) == ".375 in");
    CHECK(with_stored_unit("10 mm", in_mm) == "10 mm");
    const Reading in_inches{Unit::inch, Unit::millimetre, &practice};
    CHECK(with_stored_unit(".375", in_inches) == ".375 in");
    CHECK(with_stored_unit(".375 +-.001", in_inches) == ".375 in +-.001");
    const Reading plain{Unit::inch, Unit::inch, &practice};
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
            const length::Reading kept =
                length::parse_reading(with_stored_unit(text, {bare, stored, &practice}), stored);
            CHECK(kept.nominal.value == meant.nominal.value);
            CHECK(kept.limits == meant.limits);
        }
    }
}

TEST_CASE("a size whose way of measuring has no column keeps its range through a file") {
    const trade::Practice practice = usual_practice();
    for (const Unit stored : {Unit::inch, Unit::millimetre}) {
        const Reading reading{stored, stored, &practice};
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

TEST_CASE("limits that are there already are not written twice") {
    const trade::Practice practice = usual_practice();
    const Reading reading{Unit::inch, Unit::inch, &practice};
    CHECK(size_with_limits(read_size(".75", How::caliper, Feature::reach, reading), Unit::inch) ==
          ".75 +-.001 in");
    CHECK(size_with_limits(read_size(".75 +-.003", How::caliper, Feature::reach, reading),
                           Unit::inch) == ".75 +-.003");
    CHECK(size_with_limits(read_size(".75", How::unstated, Feature::reach, reading), Unit::inch) ==
          ".75");
}
