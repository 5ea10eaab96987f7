// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Holes and washers as they are asked for, put to the published tables.
#include <doctest/doctest.h>

#include <string>

#include "error/error.hpp"
#include "match/question.hpp"
#include "store/reference.hpp"

using length::Unit;
using match::HoleKind;

namespace {

const store::Reference& tables() {
    static const store::Reference all;
    return all;
}

trade::Practice practice() {
    return trade::read_practice(tables().practice());
}

trade::Screw screw(const std::string& text) {
    return trade::resolve_screw(text, "", tables(), {});
}

match::Hole hole(const std::string& text, Unit unit, const std::string& of = "1/4-20 shcs") {
    return match::parse_hole(text, screw(of), tables(), practice(), unit);
}

std::string refused(const std::string& text, const std::string& of) {
    try {
        (void)hole(text, Unit::inch, of);
    } catch (const error::BadData& bad) {
        return bad.what();
    }
    return "accepted";
}

match::Washer washer(const std::string& text, const std::string& of) {
    return match::parse_washer(text, screw(of), tables(), practice(), Unit::millimetre);
}

} // namespace

TEST_CASE("a name in an index is a drill, anything else a measured hole") {
    struct Row {
        std::string text;
        Unit unit;
        std::string drill; // empty: measured
    };
    for (const auto& [text, unit, drill] :
         {Row{"1", Unit::inch, "1"}, Row{"#1", Unit::inch, "#1"}, Row{"1 in", Unit::inch, "1"},
          Row{"1.000", Unit::inch, ""}, Row{".332", Unit::inch, ""},
          Row{"9/32", Unit::inch, "9/32"}, Row{"f", Unit::inch, "F"},
          Row{"7 mm", Unit::inch, "7 mm"}, Row{"2", Unit::inch, ""},
          Row{"9", Unit::millimetre, "9 mm"}, Row{"8.4", Unit::millimetre, "8.4 mm"},
          Row{"8.40", Unit::millimetre, "8.4 mm"}, Row{"8.43", Unit::millimetre, ""},
          Row{"9 +-.02", Unit::millimetre, ""}, Row{"#9", Unit::millimetre, "#9"},
          Row{"1", Unit::millimetre, "1 mm"}, Row{"1 in", Unit::millimetre, "1"}}) {
        CAPTURE(text);
        const auto found = hole(text, unit);
        CHECK((found.kind == HoleKind::drilled) == !drill.empty());
        CHECK(found.drill.name == drill);
    }
}

TEST_CASE("what the program calls a drill is that drill when it is typed back") {
    for (const auto kind : {trade::DrillKind::fraction, trade::DrillKind::number,
                            trade::DrillKind::letter, trade::DrillKind::metric})
        for (const auto& drill : tables().drills(kind))
            for (const auto unit : {Unit::inch, Unit::millimetre}) {
                if (unit == Unit::millimetre && drill.name == "1")
                    continue; // 1 mm there; `1 in` is the inch
                CAPTURE(drill.name);
                const auto found = hole(drill.name, unit);
                REQUIRE(found.kind == HoleKind::drilled);
                CHECK(found.drill == drill);
            }
}

TEST_CASE("no table has the hole of a shoulder screw, whose shoulder is a bearing") {
    for (const auto* word : {"close", "normal", "loose", "tap"})
        CHECK(refused(word, "3/8 shoulder") ==
              std::string("hole: a shoulder is a bearing, no table has its hole: '") + word + "'");
    CHECK(hole("3/8", Unit::inch, "3/8 shoulder").kind == HoleKind::drilled);
    CHECK(hole(".3755 +-.0002", Unit::inch, "3/8 shoulder").kind == HoleKind::measured);
}

TEST_CASE("a washer of a DIN 974-1 series brings the counterbore of that series") {
    // DIN 974-1:1991, series 4 and 5, after an extract in a handbook of DIN standards.
    struct Row {
        const char *of, *washer;
        std::int64_t mm;
        const char* rule;
    };
    for (const auto& [of, name, mm, rule] :
         {Row{"M6 shcs", "ISO 7092", 13, "DIN 974-1 series 4"},
          Row{"M8 shcs", "ISO 7092", 16, "DIN 974-1 series 4"},
          Row{"M6 shcs", "ISO 7089", 15, "DIN 974-1 series 5"},
          Row{"M8 shcs", "iso 7090", 18, "DIN 974-1 series 5"},
          Row{"M16 shcs", "ISO 7089", 33, "DIN 974-1 series 5"}}) {
        CAPTURE(of);
        CAPTURE(name);
        const auto asked = washer(name, of);
        REQUIRE(asked.counterbore.has_value());
        CHECK(asked.counterbore->diameter == length::millimetres(mm));
        CHECK(asked.counterbore->rule == rule);
        CHECK(asked.outside_dia.hi < asked.counterbore->diameter);
    }
    CHECK_FALSE(washer("16 x 1.6", "M8 shcs").counterbore.has_value());
    CHECK_FALSE(washer("ISO 7089", "M8 hex cap").counterbore.has_value());
}
