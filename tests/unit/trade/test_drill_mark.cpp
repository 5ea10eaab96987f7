// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Diameters of drills: ASME B94.11M, number and letter twist drills; here from memory.
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "default_practice.hpp"
#include "few_tables.hpp"
#include "refusal.hpp"
#include "trade/drill_mark.hpp"

using length::inches_e5;
using length::Length;
using length::Range;
using length::Unit;
using refusal::hint_of;
using refusal::message_of;
using trade::Drill;
using trade::DrillKind;
using trade::How;

namespace {

// Some drills, ascending as every table of them.
class SomeDrills : public few_tables::FewTables {
  public:
    [[nodiscard]] std::vector<Drill> drills(DrillKind kind) const override {
        if (kind == DrillKind::number)
            return {{"#80", kind, inches_e5(1350)},
                    {"#30", kind, inches_e5(12850)},
                    {"#7", kind, inches_e5(20100)},
                    {"#1", kind, inches_e5(22800)}};
        if (kind == DrillKind::letter)
            return {{"A", kind, inches_e5(23400)},
                    {"F", kind, inches_e5(25700)},
                    {"Z", kind, inches_e5(41300)}};
        return {};
    }
};

trade::Dimension read(const std::string& text, How how = How::unstated, Unit bare = Unit::inch) {
    return trade::read_pilot_dia(text, how, bare, default_practice::practice(), SomeDrills());
}

// .001 to .004 under the hole: common practice, no source.
Range under(std::int64_t hole_e5) {
    return {inches_e5(hole_e5 - 400), inches_e5(hole_e5 - 100)};
}

} // namespace

TEST_CASE("a pilot marked with a drill is so far under the hole of that drill") {
    CHECK(read("#7").range == under(20100));
    CHECK(read("#30").range == under(12850));
    CHECK(read("#1").range == under(22800));
    CHECK(read("A").range == under(23400));
    CHECK(read("F").range == under(25700));
    CHECK(read("Z").range == under(41300));
    CHECK(read("F", How::mark, Unit::millimetre).range == under(25700));
}

TEST_CASE("a drill's name is a mark, and is kept as it is written") {
    for (const std::string text : {"#7", "no. 7", "number 7", "No 7", "drill #7"}) {
        CAPTURE(text);
        for (const How how : {How::unstated, How::mark}) {
            const auto pilot = read(' ' + text + ' ', how);
            CHECK(pilot.text == text);
            CHECK(pilot.how == How::mark);
            CHECK(pilot.range == under(20100));
        }
    }
    for (const std::string text : {"F", "letter f", "drill f", "F drill"}) {
        CAPTURE(text);
        CHECK(read(text).range == under(25700));
    }
}

TEST_CASE("a number without its sign is a size, as it is elsewhere") {
    const auto& practice = default_practice::practice();
    for (const Unit bare : {Unit::inch, Unit::millimetre})
        for (const std::string text : {"3", ".97", "1/4", "6 mm", "go .960 no-go .965"})
            for (const How how : {How::unstated, How::mark, How::micrometer})
                CHECK(read(text, how, bare) ==
                      trade::read_dimension(text, how, trade::Feature::pilot_dia, bare, practice));
    CHECK(message_of([] { (void)read("7"); }) == "pilot diameter: too large to be true: '7'");
}

TEST_CASE("a drill's name is not measured") {
    for (const How how :
         {How::rule, How::caliper, How::micrometer, How::pin_gauge, How::test_hole, How::guess}) {
        CHECK(message_of([&] { (void)read("F", how); }) ==
              "a drill's name is a mark, not known by " + std::string(trade::to_text(how)) +
                  ": 'F'");
        CHECK(hint_of([&] { (void)read("F", how); }) ==
              "leave out how it is known, or write the size that was found, as .2548 in");
    }
}

TEST_CASE("drills that no table has, and those that no pilot runs in, are refused") {
    for (const std::string text : {"#99", "#0", "#2"}) {
        CHECK(message_of([&] { (void)read(text); }) == "no drill has this name: '" + text + "'");
        CHECK(hint_of([&] { (void)read(text); }) ==
              "they go from #1 to #80; a mark can be a fraction too, 17/64, or a size");
    }
    CHECK(message_of([] { (void)read("#80"); }) == "pilot diameter: too small to be true: '#80'");
    const few_tables::FewTables none;
    CHECK(message_of([&] {
              (void)trade::read_pilot_dia("F", How::mark, Unit::inch, default_practice::practice(),
                                          none);
          }) == "no table has such a drill: 'F'");
}

TEST_CASE("a small letter alone is a slip") {
    CHECK(message_of([] { (void)read("x"); }) == "a small letter alone is no drill's name: 'x'");
    CHECK(hint_of([] { (void)read("x"); }) == "a drill is X; otherwise write the size");
}

TEST_CASE("nothing stands behind a drill's name") {
    for (const std::string text : {"F +-.001", "#7 -.001", "#7 \xC2\xB1.001", "#10-32", "no 7+.1"})
        CHECK(message_of([&] { trade::refuse_more_than_a_drill(text); }) ==
              "a drill's name stands alone, without limits or a pitch: '" + text + "'");
    for (const std::string text :
         {"F", "#7", ".257 +-.001", "1-1/2", "go .1 no-go .2", "no-go", ""})
        CHECK(message_of([&] { trade::refuse_more_than_a_drill(text); }) == "accepted");
}
