// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The screw that a text names: which head answers, and what comes along.
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "few_tables.hpp"
#include "refusal.hpp"
#include "trade/screw.hpp"

using length::Length;
using length::sixty_fourths;
using length::thousandths;
using refusal::hint_of;
using refusal::message_of;
using trade::OwnScrew;
using trade::Screw;

namespace {

const few_tables::FewTables k_tables;

Screw resolve(const std::string& text, const std::string& series = "",
              const std::vector<OwnScrew>& own = {}) {
    return trade::resolve_screw(text, series, k_tables, own);
}

std::string refused(const std::string& text, const std::string& series = "") {
    return message_of([&] { (void)resolve(text, series); });
}

std::string hint(const std::string& text, const std::string& series = "") {
    return hint_of([&] { (void)resolve(text, series); });
}

std::vector<std::string> series_of(const Screw& screw) {
    std::vector<std::string> names;
    for (const auto& head : screw.heads)
        names.push_back(head.series);
    return names;
}

length::Range inches(std::int64_t lo, std::int64_t hi) {
    return {thousandths(lo), thousandths(hi)};
}

trade::Dimension measured(std::int64_t lo, std::int64_t hi) {
    return {"as measured", trade::How::caliper, inches(lo, hi)};
}

using Names = std::vector<std::string>;

} // namespace

TEST_CASE("the larger head answers where no series is named") {
    // ASME B18.3: 15/32 head and 1/4 key; the 1936 pattern (BS 2470): 7/16 head and 7/32 key.
    const auto screw = resolve("5/16-18 socket head cap");
    CHECK(screw.name == "5/16-18 socket head cap");
    CHECK(screw.form == "socket head cap");
    CHECK(screw.series == "ASME B18.3 1960");
    CHECK_FALSE(screw.series_said);
    CHECK(screw.size->text == "5/16");
    CHECK(screw.pitch == "18");
    CHECK(screw.head_dia == inches(457, 469));
    CHECK(screw.head_height == length::Range{thousandths(306), length::inches_e5(31250)});
    CHECK(screw.screw_dia == length::exactly(sixty_fourths(20)));
    CHECK(screw.drive == "hex socket");
    CHECK(screw.drive_size == "1/4");
    CHECK(screw.fillet_dia == thousandths(354));
    CHECK(screw.origin.source == "ASME B18.3 1960");
    CHECK_FALSE(screw.head_measured);
    CHECK_FALSE(screw.hex);
    CHECK_FALSE(screw.shoulder);
    CHECK(series_of(screw) == Names{"ASME B18.3 1960", "ASA B18.3 1936", "BSW socket"});
}

TEST_CASE("equal diameters go by height, equal heights by table order") {
    CHECK(resolve("#10 pan head").series == "ASME B18.6.3 pan recessed");
    CHECK(series_of(resolve("3/8 shcs")) == Names{"ASME B18.3 1960", "ASA B18.3 1936"});
    CHECK(resolve("1/4 fillister").series == "ASME B18.6.3 fillister");
}

TEST_CASE("a named series answers, in the text or beside it") {
    for (const auto& screw :
         {resolve("5/16-18 shcs 1936"), resolve("5/16-18 shcs", "1936"),
          resolve("5/16-18 shcs", "older pattern"), resolve("5/16-18", "ASA B18.3 1936"),
          resolve("5/16-18 shcs 1960", "Older")}) {
        CHECK(screw.series == "ASA B18.3 1936");
        CHECK(screw.series_said);
        CHECK(screw.form == "socket head cap");
        CHECK(screw.head_dia == inches(425, 437));
        CHECK(screw.drive_size == "7/32");
        CHECK(series_of(screw) == Names{"ASA B18.3 1936", "ASME B18.3 1960", "BSW socket"});
    }
}

TEST_CASE("a pitch drops the rows of threads that do not have it, and no others") {
    CHECK(series_of(resolve("5/16-24 shcs")) == Names{"ASME B18.3 1960", "ASA B18.3 1936"});
    // 5/16-32 UNEF: no head lists it, yet a head goes by the size.
    const auto extra_fine = resolve("5/16-32 shcs");
    CHECK(extra_fine.series == "ASME B18.3 1960");
    CHECK(extra_fine.pitch == "32");
    CHECK(extra_fine.tap->drill == "9/32");
    CHECK(refused("5/16-20 shcs") == "screw: no table has this pitch: '20'");
    CHECK(hint("5/16-20 shcs") == "pitches there are: 18, 24, 32");
    CHECK(refused("5/16-24 BSW") == "screw: 5/16 bsw has another pitch: '24'");
    CHECK(hint("5/16-24 BSW") == "it has 18; leave one of the two out");
    CHECK(refused("M8x0.75 shcs") == "screw: no table has this pitch: '0.75'");
    CHECK(hint("M8x0.75 shcs") == "pitches there are: 1.25, 1");
}

TEST_CASE("a withdrawn series answers only by name") {
    const auto screw = resolve("M8 shcs");
    CHECK(screw.series == "ISO 4762"); // though the withdrawn head is larger here
    CHECK(series_of(screw) == Names{"ISO 4762"});
    CHECK(series_of(resolve("M8 DIN 912")) == Names{"DIN 912", "ISO 4762"});
    CHECK(resolve("M36 shcs", "din 912").head_dia->hi == length::millimetres(54));
    CHECK(refused("M36 shcs") == "screw: only a withdrawn series has this size: 'M36'");
    CHECK(hint("M36 shcs") == "name it to use it: DIN 912");
    CHECK(refused("M8x1 shcs") == "screw: only a withdrawn series has this size and pitch: 'M8'");
}

TEST_CASE("a size that no table has is refused with those there are") {
    CHECK(refused("9/16 shcs") == "screw: no socket head cap in the tables of this size: '9/16'");
    CHECK(hint("9/16 shcs") == "sizes: #1, #10, 5/16, 3/8, 1/2, 1, 1-1/4, M8, M36, 2BA");
    CHECK(refused("1/2 shcs 1960") == "screw: ASME B18.3 1960 has no such size: '1/2'");
    CHECK(hint("1/2 shcs 1960") ==
          "this size is in BSW socket; ASME B18.3 1960 has #1, #10, 5/16, 3/8, 1, 1-1/4");
    for (const auto* text : {"9/16 shcs", "1/2 shcs 1960", "M36 shcs"})
        CHECK_THROWS_AS((void)resolve(text), error::NoSuchRecord);
    CHECK_THROWS_AS((void)resolve("5/16-20 shcs"), error::BadData);
    CHECK_THROWS_AS((void)resolve("5/16-18 flat"), error::BadData);
}

TEST_CASE("a series beside the text must be one, and of the form") {
    CHECK(refused("5/16 shcs", "modern") == "series: not known: 'modern'");
    CHECK(refused("5/16 shcs", "5/16") == "series: not known: '5/16'");
    CHECK(refused("5/16 shcs", "1936 please") == "series: not known: '1936 please'");
    CHECK(refused("3/8 hex", "1936") == "screw: a series that does not go with the rest: '1936'");
    CHECK(resolve("5/16 shcs", "  ").series == "ASME B18.3 1960");
}

TEST_CASE("holes are the published ones, and the shop chart's where one is missing") {
    const auto inch = resolve("5/16 shcs");
    CHECK(inch.close->diameter == sixty_fourths(21));
    CHECK(inch.normal->diameter == sixty_fourths(22));
    CHECK(inch.loose->diameter == sixty_fourths(23));
    CHECK(inch.clearance_system == "ASME B18.2.8");

    const auto number = resolve("#10 shcs");
    CHECK(number.close->drill == ".2055");
    CHECK(number.normal->drill == ".2010");
    CHECK(number.loose->drill == ".2380");
    CHECK(number.clearance_system == "ASME B18.2.8, shop chart");

    const auto chart = resolve("1/2 shcs");
    CHECK(chart.close->drill == "33/64");
    CHECK(chart.normal->drill == "17/32");
    CHECK_FALSE(chart.loose.has_value());
    CHECK(chart.clearance_system == "shop chart");

    CHECK(resolve("M8 shcs").clearance_system == "ISO 273");
    CHECK_FALSE(resolve("1 in shcs").close.has_value());
    CHECK(resolve("1 in shcs").clearance_system.empty());
}

TEST_CASE(
    "a shoulder screw goes by its shoulder, or by a thread that is no shoulder; both are said") {
    for (const auto* text :
         {"3/8 shoulder screw", "5/16-18 shoulder screw", "5/16 shoulder bolt"}) {
        CAPTURE(text);
        const auto screw = resolve(text);
        CHECK(screw.name == "3/8 shoulder");
        CHECK(screw.thread == "5/16");
        CHECK(screw.screw_dia->hi == sixty_fourths(24));
    }
    CHECK(resolve("3/8 shoulder").taken.empty());
    CHECK(resolve("5/16 shoulder").taken ==
          Names{"5/16 is taken as the thread; the shoulder is 3/8 in"});
    CHECK(refused("3/8-16 shoulder") == "screw: no table has this pitch: '16'");
}

TEST_CASE("without a form it is a socket head cap screw, a bolt a hexagon, and that is noted") {
    const auto plain = resolve("5/16-18");
    CHECK(plain.name == "5/16-18 socket head cap");
    CHECK_FALSE(plain.form_said);
    CHECK(resolve("3/8-16 bolt").form == "hex cap");
    CHECK_FALSE(resolve("3/8-16 bolt").form_said);
    CHECK(resolve("3/8-16 allen bolt").form == "socket head cap");
    CHECK(resolve("5/16-18 shcs").form_said);
    CHECK(resolve("5/16-18 1936").form_said); // the series has but one form
}

TEST_CASE("what follows an x is a pitch where it can be one, else the length, which is noted") {
    CHECK(resolve("M8x1.25").pitch == "1.25");
    CHECK(resolve("M8x1.25").taken.empty());
    CHECK(resolve("M8x20").pitch.empty());
    CHECK(resolve("M8x20").taken == Names{"x 20 is taken as the length, 20 mm"});
    CHECK(resolve("M8x1.25x20").pitch == "1.25");
    CHECK(resolve("M8x1.25x20").taken.empty());
    CHECK(resolve("5/16 x 18 shcs").pitch == "18");
    CHECK(resolve("5/16 x 2 shcs").taken == Names{"x 2 is taken as the length, 2 in"});
    CHECK(resolve("5/16-18 x 3/4 shcs").pitch == "18");
    CHECK(resolve("5/16-18 shcs x 3/4 long").taken.empty());
}

TEST_CASE("a shoulder screw has no clearance holes and the tap drill of its thread") {
    const auto screw = resolve("3/8 shoulder screw");
    CHECK(screw.shoulder);
    CHECK_FALSE(screw.close.has_value());
    CHECK_FALSE(screw.normal.has_value());
    CHECK_FALSE(screw.loose.has_value());
    CHECK(screw.tap->drill == "F");
    CHECK(resolve("3/8 shcs").close->drill == "25/64");
}

TEST_CASE("the tap drill is that of the pitch, else of the coarse pitch the head is made with") {
    CHECK(resolve("5/16-24 shcs").tap->drill == "I");
    CHECK(resolve("5/16 shcs").tap->drill == "F");
    CHECK(resolve("1/2 BSW").tap->drill == "10.5 mm");
    CHECK(resolve("5/16 BSW").tap->drill == "6.5 mm"); // not F, which is for 5/16 UNC
    CHECK(resolve("5/16-18 shcs 1936").tap->drill == "F");
    CHECK(resolve("5/16 UNF shcs").tap->drill == "I");
    CHECK(resolve("M8x1.25 shcs").tap->drill == "6.8 mm");
    CHECK_FALSE(resolve("M8x1 DIN 912").tap.has_value());
    CHECK_FALSE(resolve("#10 shcs").tap.has_value());
}

TEST_CASE("counterbores are those of the series that answers") {
    const auto newer = resolve("5/16 shcs").counterbores;
    REQUIRE(newer.size() == 1);
    CHECK(newer[0].rule == "ASME B18.3 appendix");
    const auto older = resolve("5/16 shcs 1936").counterbores;
    REQUIRE(older.size() == 1);
    CHECK(older[0].diameter == sixty_fourths(30));
}

TEST_CASE("a hex head is known by its form") {
    CHECK(resolve("3/8 hex cap").hex);
    CHECK(resolve("1-8 hex cap").size->diameter == thousandths(1000));
    CHECK_FALSE(resolve("3/8 hex socket head cap").hex);
}

TEST_CASE("an own screw of the name comes before the tables and keeps what it does not give") {
    OwnScrew own;
    own.name = "5/16-18  Socket head cap";
    own.head_dia = measured(460, 462);
    own.drive_size = "6 mm";
    for (const auto* text : {"5/16-18 socket head CAP", "socket cap 5/16-18", "5/16-18 shcs",
                             "5/16-18", "5/16-18 x 3/4 allen"}) {
        CAPTURE(text);
        const auto screw = resolve(text, "", {own});
        CHECK(screw.name == "5/16-18  Socket head cap");
        CHECK(screw.head_dia == inches(460, 462));
        CHECK(screw.head_measured);
        CHECK(screw.series.empty());
        CHECK(screw.origin.source == "the shop's own screw");
        CHECK(screw.head_height->hi == length::inches_e5(31250));
        CHECK(screw.drive == "hex socket");
        CHECK(screw.drive_size == "6 mm");
        CHECK(screw.close->diameter == sixty_fourths(21));
        CHECK(screw.fillet_dia == thousandths(354));
        CHECK(screw.counterbores.size() == 1);
        CHECK(screw.tap->drill == "F");
    }
    CHECK_FALSE(resolve("5/16-24 shcs", "", {own}).head_measured);
    CHECK_FALSE(resolve("5/16 shcs", "", {own}).head_measured);
    CHECK_FALSE(resolve("5/16-18 shcs 1936", "", {own}).head_measured);
}

TEST_CASE("an own screw that gives no head leaves the tables' head to answer") {
    OwnScrew own;
    own.name = "10-24 shcs";
    own.screw_dia = measured(185, 187);
    const auto screw = resolve("#10-24 socket head cap", "", {own});
    CHECK(screw.screw_dia == inches(185, 187));
    CHECK(screw.series == "ASME B18.3 1960");
    CHECK_FALSE(screw.head_measured);
}

TEST_CASE("an own screw needs no tables") {
    OwnScrew own;
    own.name = "Pump cover screw";
    own.head_dia = measured(500, 502);
    own.head_height = measured(200, 202);
    own.drive = "slot";
    const auto screw = resolve("pump  cover screw", "", {own});
    CHECK(screw.name == "Pump cover screw");
    CHECK(screw.form.empty());
    CHECK_FALSE(screw.size.has_value());
    CHECK(screw.head_dia == inches(500, 502));
    CHECK(screw.head_height == inches(200, 202));
    CHECK_FALSE(screw.screw_dia.has_value());
    CHECK(screw.drive == "slot");
    CHECK(screw.heads.empty());
    CHECK_FALSE(screw.close.has_value());
    CHECK(message_of([&] { (void)resolve("pump cover", "", {own}); }) ==
          "screw: not a word that is known: 'pump'");
    CHECK(message_of([&] { (void)resolve("pump cover screw", "1936", {own}); }) ==
          "screw: not a word that is known: 'pump'");
}
