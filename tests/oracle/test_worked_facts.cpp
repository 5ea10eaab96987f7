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

TEST_CASE("a 15/32 cutter is ready for the older 5/16 head and measure first for the newer") {
    Bench bench;
    bench.add_integral(1, 46'870);
    CHECK(bench.kind() == AnswerKind::measure_first);
    CHECK(bench.verdict("head in the counterbore") == Verdict::unknown);
    CHECK(bench.answer().size == SizeClass::small);

    bench.question.screw.head_dia = oracle::k_older_head;
    CHECK(bench.kind() == AnswerKind::ready);
    CHECK(bench.answer().size == SizeClass::tool_size);

    bench.question.screw.head_dia = inches(46'150, 46'250);
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.screw.head_dia = inches(46'150, 46'400);
    CHECK(bench.kind() == AnswerKind::measure_first);
}

TEST_CASE("a 9/16 cutter asks for a 3/8 head of .557 or less") {
    Bench bench;
    bench.question.screw.screw_dia = inches(37'500, 37'500);
    bench.question.hole = {
        match::HoleKind::drilled, "", oracle::fraction_drill("25/64", 25), {}, false};
    bench.add_integral(1, 56'250).pilot_dia = about(39'000);
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
        match::HoleKind::drilled, "", oracle::fraction_drill("5/16", 20), {}, false};
    bench.question.screw.head_dia = inches(46'150, 46'250);
    bench.add_integral(1, 46'870).pilot_dia = about(30'620, 0);
    // .3125 less .3062 is .0063; the cutter is .4685 at least, the head .4625 at most: .006.
    CHECK(bench.verdict("head in the counterbore") == Verdict::unknown);
    bench.tools.bodies[0].pilot_dia = about(30'650, 0);
    CHECK(bench.verdict("head in the counterbore") == Verdict::pass);
}

TEST_CASE("sizes of cutter for the newer 5/16 head stand to the published 17/32") {
    Bench bench;
    bench.publish("handbook", "tool", sixty_fourths(32));
    bench.publish("ASME B18.3 appendix", "recommended", sixty_fourths(34));
    const auto size_of = [&](std::int64_t cut) {
        bench.tools.bodies.clear();
        bench.add_integral(1, cut);
        return bench.answer().size;
    };
    // Tool .469 + 1/32 = .50025; halfway .51575; to .54125; limit .53125 + .469/4 = .6485.
    CHECK(size_of(49'724) == SizeClass::small);
    CHECK(size_of(49'725) == SizeClass::tool_size);
    CHECK(size_of(51'575) == SizeClass::tool_size);
    CHECK(size_of(51'576) == SizeClass::recommended);
    CHECK(size_of(54'125) == SizeClass::recommended);
    CHECK(size_of(54'126) == SizeClass::large);
    CHECK(size_of(64'850) == SizeClass::large);
    CHECK_FALSE(size_of(64'851).has_value());
    CHECK(bench.kind() == AnswerKind::closest);
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
    bench.add_integral(1, 48'163);
    CHECK(bench.answer().size == SizeClass::tool_size);
    screw.size = trade::ScrewSize{trade::SizeSystem::inch, "1", sixty_fourths(64)};
    bench.tools.bodies[0].cut_dia = about(60'400);
    CHECK(bench.answer().size == SizeClass::recommended);
    screw.size = trade::ScrewSize{trade::SizeSystem::inch, "7/8", sixty_fourths(56)};
    CHECK(bench.answer().size == SizeClass::large);
}

TEST_CASE("a drill cuts over by the table, by a straight line between its rows, flat outside") {
    const Bench bench;
    const auto hole = [&](std::int64_t of_64) {
        return oracle::drilled(bench.shop, oracle::fraction_drill("", of_64));
    };
    CHECK(hole(16) == inches(25'250, 25'650));
    CHECK(hole(12) == inches(18'925, 19'300));
    CHECK(hole(2) == inches(3'225, 3'325));
    CHECK(hole(96) == inches(150'400, 150'900));
    CHECK(hole(40) == inches(62'800, 63'300));
    // A pilot .002 under a 1/4 drill runs with .0045 to .0085.
    CHECK(hole(16) - inches(24'800, 24'800) == inches(450, 850));
}

TEST_CASE("a hole over 95 % of the smallest head leaves no seat") {
    Bench bench;
    bench.add_integral(1, 53'125).pilot_dia = about(41'900, 0);
    bench.question.hole.kind = match::HoleKind::measured;
    bench.question.hole.measured = inches(42'370, 42'370);
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.hole.measured = inches(42'370, 42'371);
    CHECK(bench.kind() == AnswerKind::closest);
    CHECK(bench.verdict("head in the counterbore") == Verdict::fail);
}

TEST_CASE("a counterbore of unknown reach reaches its own cutting diameter, others do not") {
    Bench bench;
    bench.add_integral(1, 53'125);
    CHECK(bench.verdict("depth") == Verdict::pass);
    bench.tools.bodies[0].kind = trade::BodyKind::unknown;
    CHECK(bench.verdict("depth") == Verdict::unknown);
    // Head .312 and 1/64 below the surface.
    bench.tools.bodies[0].reach = about(32'763, 0);
    CHECK(bench.verdict("depth") == Verdict::pass);
    bench.tools.bodies[0].reach = about(32'762, 0);
    CHECK(bench.verdict("depth") == Verdict::fail);
    bench.question.washer = match::Washer{"", inches(40'000, 40'000), std::nullopt};
    CHECK(bench.verdict("depth") == Verdict::unknown);
}

TEST_CASE("spotfacers spotface hex heads and sink no others") {
    Bench bench;
    bench.add_integral(1, 53'125).kind = trade::BodyKind::spotfacer;
    bench.tools.bodies[0].reach = about(50'000);
    CHECK(bench.kind() == AnswerKind::closest);
    CHECK(bench.verdict("depth") == Verdict::fail);
    bench.question.screw.hex = true;
    CHECK(bench.kind() == AnswerKind::ready);
    bench.tools.bodies[0].reach.reset();
    CHECK(bench.verdict("depth") == Verdict::unknown);
}

TEST_CASE("a washer larger than the head takes its place") {
    Bench bench;
    bench.add_integral(1, 53'125);
    bench.question.washer = match::Washer{"", inches(52'000, 52'500), inches(6'000, 6'500)};
    CHECK(bench.verdict("head in the counterbore") == Verdict::pass);
    bench.question.washer->outside_dia = inches(52'000, 52'700);
    CHECK(bench.verdict("head in the counterbore") == Verdict::unknown);
}

TEST_CASE("through work must be thicker than the cut, and guide half a pilot diameter") {
    Bench bench;
    bench.add_integral(1, 53'125);
    CHECK_FALSE(bench.verdict("pilot has room and guidance").has_value());
    bench.question.thick = inches(32'800, 32'800);
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.thick = inches(32'762, 32'762);
    CHECK(bench.verdict("pilot has room and guidance") == Verdict::fail);
    bench.question.thick = inches(40'000, 40'000);
    bench.tools.bodies[0].pilot_length = about(16'300);
    CHECK(bench.verdict("pilot has room and guidance") == Verdict::fail);
    bench.tools.bodies[0].pilot_length.reset();
    CHECK(bench.verdict("pilot has room and guidance") == Verdict::unknown);
}

TEST_CASE("a blind hole must leave room for the pilot below the seat") {
    Bench bench;
    bench.add_integral(1, 53'125);
    // Seat at .327625; pilot .4998 to .5002.
    bench.question.blind = inches(82'783, 82'783);
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.blind = inches(82'782, 82'782);
    CHECK(bench.kind() == AnswerKind::measure_first);
    bench.question.blind = inches(82'742, 82'742);
    CHECK(bench.kind() == AnswerKind::closest);
    // Short by more than a quarter of the pilot.
    bench.question.blind = inches(70'200, 70'200);
    CHECK(bench.ask().answers.empty());
}

TEST_CASE("a straight shank fits the chuck, a taper its own spindle") {
    Bench bench;
    bench.add_integral(1, 53'125).shank_dia = about(50'000);
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
