// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The oracle itself against facts worked out by hand: heads, sizes, holes, depth.
#include <doctest/doctest.h>

#include "oracle/bench.hpp"
#include "oracle/holes.hpp"
#include "oracle/set_screw.hpp"

using length::inches_e5;
using length::sixty_fourths;
using match::AnswerKind;
using match::SizeClass;
using match::Verdict;
using oracle::about;
using oracle::Bench;
using oracle::inches;

// 1-1/4 heads: 1.852 to 1.875 (ASME B18.3); of the older pattern 1.750 (ASA B18.3 of 1936, from
// memory), its minimum less the spread of the newer.
TEST_CASE("a 1-7/8 cutter is ready for the older 1-1/4 head and measure first for the newer") {
    Bench bench;
    bench.question.screw.screw_dia = inches(125'000, 125'000);
    bench.question.screw.size =
        trade::ScrewSize{trade::SizeSystem::inch, "1-1/4", sixty_fourths(80)};
    bench.question.screw.head_dia = inches(185'200, 187'500);
    bench.question.hole = {
        match::HoleKind::drilled, "", oracle::fraction_drill("1-9/32", 82), {}, false};
    bench.add_integral(1, 187'500).pilot_dia = about(127'600);
    CHECK(bench.kind() == AnswerKind::measure_first);
    CHECK(bench.verdict("head in the counterbore") == Verdict::unknown);
    CHECK(bench.answer().size == SizeClass::small);

    bench.question.screw.head_dia = inches(172'700, 175'000);
    CHECK(bench.kind() == AnswerKind::ready);
    CHECK(bench.answer().size == SizeClass::recommended);

    bench.question.screw.head_dia = inches(186'850, 186'980);
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.screw.head_dia = inches(186'850, 187'100);
    CHECK(bench.kind() == AnswerKind::measure_first);
}

TEST_CASE("a 9/16 cutter asks for a 3/8 head of .557 or less") {
    Bench bench;
    bench.add_integral(1, 56'250);
    bench.question.screw.head_dia = inches(54'000, 56'200);
    CHECK(bench.verdict("head in the counterbore") == Verdict::unknown);
    bench.question.screw.head_dia = inches(54'000, 55'730);
    CHECK(bench.verdict("head in the counterbore") == Verdict::pass);
    bench.question.screw.head_dia = inches(54'000, 55'731);
    CHECK(bench.verdict("head in the counterbore") == Verdict::unknown);
}

TEST_CASE("a loose pilot lets the cutter sit off by more than .005") {
    Bench bench;
    bench.question.hole = {
        match::HoleKind::drilled, "", oracle::fraction_drill("3/8", 24), {}, false};
    bench.question.screw.head_dia = inches(55'600, 55'700);
    bench.add_integral(1, 56'250).pilot_dia = about(36'900, 0);
    // .375 less .369 is .006; the cutter is .5623 at least, the head .557 at most: .0053.
    CHECK(bench.verdict("head in the counterbore") == Verdict::unknown);
    bench.tools.bodies[0].pilot_dia = about(37'000, 0);
    CHECK(bench.verdict("head in the counterbore") == Verdict::pass);
}

TEST_CASE("sizes of cutter for the 3/8 head stand to the published 5/8") {
    Bench bench;
    bench.publish("handbook", "tool", sixty_fourths(38));
    bench.publish("ASME B18.3 appendix", "recommended", sixty_fourths(40));
    const auto size_of = [&](std::int64_t cut) {
        bench.tools.bodies.clear();
        bench.add_integral(1, cut);
        return bench.answer().size;
    };
    // Tool .562 + 1/32 = .59325; halfway .609125; to .635; limit .625 + 1/8 = .750.
    CHECK(size_of(59'024) == SizeClass::small);
    CHECK(size_of(59'025) == SizeClass::tool_size);
    CHECK(size_of(60'912) == SizeClass::tool_size);
    CHECK(size_of(60'913) == SizeClass::recommended);
    CHECK(size_of(63'500) == SizeClass::recommended);
    CHECK(size_of(63'501) == SizeClass::large);
    CHECK(size_of(75'000) == SizeClass::large);
    CHECK_FALSE(size_of(75'001).has_value());
    CHECK(bench.kind() == AnswerKind::closest);
}

// As of fillister heads: .59375, and .010 over it.
TEST_CASE("where only the handbook's tool is published it is the recommendation") {
    Bench bench;
    bench.publish("handbook", "tool", sixty_fourths(38));
    bench.add_integral(1, 60'375);
    CHECK(bench.answer().size == SizeClass::recommended);
    bench.tools.bodies[0].cut_dia = about(60'376);
    CHECK(bench.answer().size == SizeClass::large);
    bench.tools.bodies[0].cut_dia = about(59'074);
    CHECK(bench.answer().size == SizeClass::small);
    bench.tools.bodies[0].cut_dia = about(59'075);
    CHECK(bench.answer().size == SizeClass::tool_size);
}

TEST_CASE("an M8 cutter to DIN 974-1 is tool size, and .254 mm over it still recommended") {
    Bench bench;
    trade::Screw& screw = bench.question.screw;
    screw.size = trade::ScrewSize{trade::SizeSystem::metric, "M8", length::millimetres(8)};
    screw.head_dia = {length::micrometres(12'730), length::micrometres(13'270)};
    bench.publish("DIN 974-1 series 1", "recommended", length::millimetres(15));
    const auto size_of = [&](std::int64_t micrometres) {
        bench.tools.bodies.clear();
        bench.add_integral(1, 1).cut_dia->range = length::exactly(length::micrometres(micrometres));
        return bench.answer().size;
    };
    CHECK(size_of(14'900) == SizeClass::small);
    CHECK(size_of(14'930) == SizeClass::tool_size);
    CHECK(size_of(15'000) == SizeClass::tool_size);
    CHECK(size_of(15'254) == SizeClass::recommended);
    CHECK(size_of(15'260) == SizeClass::large);
}

TEST_CASE("number sizes take a tool 1/64 over the head, and 1 in screws 1/8 without a table") {
    Bench bench;
    trade::Screw& screw = bench.question.screw;
    screw.size = trade::ScrewSize{trade::SizeSystem::number, "#12", inches_e5(21'600)};
    bench.add_integral(1, 57'463); // .562 + 1/64 - .003 = .574625
    CHECK(bench.answer().size == SizeClass::tool_size);
    screw.size = trade::ScrewSize{trade::SizeSystem::inch, "1", sixty_fourths(64)};
    bench.tools.bodies[0].cut_dia = about(69'700);
    CHECK(bench.answer().size == SizeClass::recommended);
    screw.size = trade::ScrewSize{trade::SizeSystem::inch, "7/8", sixty_fourths(56)};
    CHECK(bench.answer().size == SizeClass::large);
}

// The larger of the handbook's average most (by a straight line between its rows, flat outside) and
// the published limit.
TEST_CASE("a drill leaves a hole from its own size to the most that it cuts over") {
    const Bench bench;
    const auto hole = [&](std::int64_t of_64) {
        return oracle::drilled(bench.shop, oracle::fraction_drill("", of_64));
    };
    CHECK(hole(16) == inches(25'000, 25'650));   // .0065, .005
    CHECK(hole(12) == inches(18'750, 19'300));   // .0055, .005
    CHECK(hole(2) == inches(3'125, 3'525));      // .002, .004
    CHECK(hole(40) == inches(62'500, 63'300));   // .008, .008
    CHECK(hole(64) == inches(100'000, 101'000)); // .009, .010
    CHECK(hole(96) == inches(150'000, 151'200)); // .009, .012
}

TEST_CASE("a hole over 85 % of the smallest head leaves no seat") {
    Bench bench;
    bench.add_integral(1, 62'500).pilot_dia = about(45'650, 0);
    bench.question.hole.kind = match::HoleKind::measured;
    bench.question.hole.measured = inches(45'900, 45'900);
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.hole.measured = inches(45'900, 45'901);
    CHECK(bench.kind() == AnswerKind::closest);
    CHECK(bench.verdict("head in the counterbore") == Verdict::fail);
}

TEST_CASE("a counterbore of unknown reach reaches its own cutting diameter, others do not") {
    Bench bench;
    bench.add_integral(1, 62'500);
    CHECK(bench.verdict("depth") == Verdict::pass);
    bench.tools.bodies[0].kind = trade::BodyKind::unknown;
    CHECK(bench.verdict("depth") == Verdict::unknown);
    // Head .375 and 1/64 below the surface.
    bench.tools.bodies[0].reach = about(39'063, 0);
    CHECK(bench.verdict("depth") == Verdict::pass);
    bench.tools.bodies[0].reach = about(39'062, 0);
    CHECK(bench.verdict("depth") == Verdict::fail);
    bench.question.washer = match::Washer{"", inches(40'000, 40'000), std::nullopt};
    CHECK(bench.verdict("depth") == Verdict::unknown);
}

TEST_CASE("spotfacers spotface hex heads and sink no others") {
    Bench bench;
    bench.add_integral(1, 62'500).kind = trade::BodyKind::spotfacer;
    bench.tools.bodies[0].reach = about(50'000);
    CHECK(bench.kind() == AnswerKind::closest);
    CHECK(bench.verdict("depth") == Verdict::fail);
    bench.question.screw.hex = true;
    CHECK(bench.kind() == AnswerKind::ready);
    bench.tools.bodies[0].reach.reset();
    CHECK(bench.verdict("depth") == Verdict::pass);
    // 1/16, whatever goes under the head.
    bench.question.washer = match::Washer{"", inches(40'000, 40'000), std::nullopt};
    bench.tools.bodies[0].reach = about(6'250, 0);
    CHECK(bench.verdict("depth") == Verdict::pass);
    bench.tools.bodies[0].reach = about(6'249, 0);
    CHECK(bench.verdict("depth") == Verdict::fail);
}

TEST_CASE("a washer larger than the head takes its place") {
    Bench bench;
    bench.add_integral(1, 62'500);
    bench.question.washer = match::Washer{"", inches(61'000, 61'900), inches(6'000, 6'500)};
    CHECK(bench.verdict("head in the counterbore") == Verdict::pass);
    bench.question.washer->outside_dia = inches(61'000, 62'000);
    CHECK(bench.verdict("head in the counterbore") == Verdict::unknown);
}

TEST_CASE("through work must be thicker than the cut, and guide half a pilot diameter") {
    Bench bench;
    bench.add_integral(1, 62'500);
    CHECK_FALSE(bench.verdict("pilot has room and guidance").has_value());
    bench.question.thick = inches(39'100, 39'100);
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.thick = inches(39'062, 39'062);
    CHECK(bench.verdict("pilot has room and guidance") == Verdict::fail);
    bench.question.thick = inches(50'000, 50'000);
    bench.tools.bodies[0].pilot_length = about(19'380);
    CHECK(bench.verdict("pilot has room and guidance") == Verdict::fail);
    // Unrecorded, it is taken as .3887 at most: below a depth of .390625 that ends at .779325.
    bench.tools.bodies[0].pilot_length.reset();
    CHECK(bench.verdict("pilot has room and guidance") == Verdict::unknown);
    bench.question.thick = inches(77'932, 77'932);
    CHECK(bench.verdict("pilot has room and guidance") == Verdict::unknown);
    bench.question.thick = inches(77'933, 77'933);
    CHECK(bench.verdict("pilot has room and guidance") == Verdict::pass);
    bench.question.blind = inches(200'000, 200'000);
    CHECK(bench.verdict("pilot has room and guidance") == Verdict::unknown);
}

TEST_CASE("a head goes as deep as the standard of its counterbore says, unless asked otherwise") {
    Bench bench;
    bench.publish("DIN 974-1 series 1", "recommended", sixty_fourths(40));
    bench.question.screw.counterbores[0].depth_addition = length::thousandths(20);
    bench.add_integral(1, 62'500).reach = about(39'499, 0);
    CHECK(bench.verdict("depth") == Verdict::pass); // 1/64 was asked for
    bench.question.below.reset();
    CHECK(bench.verdict("depth") == Verdict::fail);
    bench.tools.bodies[0].reach = about(39'500, 0);
    CHECK(bench.verdict("depth") == Verdict::pass);
}

TEST_CASE("a blind hole must leave room for the pilot below the seat") {
    Bench bench;
    bench.add_integral(1, 62'500);
    // Seat at .390625; pilot .4998 to .5002.
    bench.question.blind = inches(89'083, 89'083);
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.blind = inches(89'082, 89'082);
    CHECK(bench.kind() == AnswerKind::measure_first);
    bench.question.blind = inches(89'042, 89'042);
    CHECK(bench.kind() == AnswerKind::closest);
    // Short by more than a quarter of the pilot.
    bench.question.blind = inches(76'500, 76'500);
    CHECK(bench.ask().answers.empty());
}

TEST_CASE("a straight shank fits the chuck, a taper its own spindle") {
    Bench bench;
    bench.add_integral(1, 62'500).shank_dia = about(50'000);
    bench.question.machine = trade::Machine{"", inches(6'250, 50'020), 2};
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.machine->chuck = inches(6'250, 50'000);
    CHECK(bench.verdict("shank in the spindle") == Verdict::unknown);
    bench.tools.bodies[0].shank_kind = "Morse 3";
    CHECK(bench.verdict("shank in the spindle") == Verdict::fail);
    bench.tools.bodies[0].shank_kind = "Morse 2";
    CHECK(bench.verdict("shank in the spindle") == Verdict::pass);
}

TEST_CASE("set screws are read by number, fraction and millimetres") {
    CHECK(oracle::major_diameter("#8-32") == inches_e5(16'400));
    CHECK(oracle::major_diameter("1/4-20") == inches_e5(25'000));
    CHECK(oracle::major_diameter("M5") == length::millimetres(5));
    CHECK_FALSE(oracle::major_diameter("").has_value());
}
