// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The oracle itself against answers worked out by hand: pilots, drills, the fold and the order.
#include <doctest/doctest.h>

#include "oracle/bench.hpp"

using match::AnswerKind;
using match::Verdict;
using oracle::about;
using oracle::Bench;
using oracle::Form;
using oracle::inches;
using trade::Tried;

TEST_CASE("a pilot that runs and slips is ready, with the published close drill") {
    Bench bench;
    bench.add_removable(1);
    bench.add_pilot(2);
    CHECK(bench.kind() == AnswerKind::ready);
    CHECK(bench.answer().pilot == 2);
    CHECK(bench.answer().drill == "25/64");
    CHECK(bench.answer().other_pilots == 0);
    bench.add_pilot(3);
    CHECK(bench.answer().pilot == 2);
    CHECK(bench.answer().other_pilots == 1);
}

TEST_CASE("without a pilot one is made, and an unknown bore is measured first") {
    Bench bench;
    bench.add_removable(1);
    CHECK(bench.kind() == AnswerKind::make_pilot);
    CHECK(bench.answer().drill == "25/64");
    CHECK_FALSE(bench.answer().pilot.has_value());
    bench.tools.bodies[0].bore.reset();
    CHECK(bench.kind() == AnswerKind::measure_first);
    CHECK_FALSE(bench.answer().pilot.has_value());
    bench.tools.bodies[0].bore = about(25'000);
    bench.tools.bodies[0].retired = "worn out";
    CHECK(bench.kind() == AnswerKind::closest);
    bench.tools.bodies[0].kind = trade::BodyKind::spotfacer;
    CHECK(bench.ask().answers.empty());
    CHECK(bench.ask().not_listed == std::vector<std::int64_t>{1});
}

TEST_CASE("a trial outranks what was measured") {
    Bench bench;
    bench.add_removable(1);
    bench.add_pilot(2).shank_dia = about(25'100, 0);
    CHECK(bench.kind() == AnswerKind::make_pilot);
    const auto kind_when = [&](Tried how) {
        bench.tools.trials = {{2, 1, how}};
        return bench.kind();
    };
    CHECK(kind_when(Tried::slides_and_holds) == AnswerKind::ready);
    CHECK(kind_when(Tried::slides) == AnswerKind::ready);
    CHECK(kind_when(Tried::binds) == AnswerKind::after_work);
    CHECK(kind_when(Tried::loose) == AnswerKind::make_pilot);
    bench.tools.pilots[0].shank_dia = about(24'950, 0);
    CHECK(kind_when(Tried::will_not_go) == AnswerKind::make_pilot);
    CHECK(bench.ask(Form::pairs).answers.at(0).kind == AnswerKind::closest);
}

TEST_CASE("a pilot found in a body that it should not fit is measured first") {
    Bench bench;
    bench.add_removable(1);
    bench.add_pilot(2).shank_dia = about(25'100, 0);
    bench.tools.pilots[0].in_body = 1;
    CHECK(bench.kind() == AnswerKind::measure_first);
    CHECK(bench.verdict("pilot shank in the bore") == Verdict::unknown);
}

TEST_CASE("a shank longer than its bore is work, unless it was tried and slides") {
    Bench bench;
    bench.add_removable(1).bore_depth = about(75'000);
    bench.add_pilot(2).shank_length = about(75'041);
    CHECK(bench.kind() == AnswerKind::after_work);
    bench.tools.pilots[0].shank_length = about(75'040);
    CHECK(bench.kind() == AnswerKind::ready);
    bench.tools.pilots[0].shank_length = about(80'000);
    bench.tools.trials = {{2, 1, Tried::slides}};
    CHECK(bench.kind() == AnswerKind::ready);
}

TEST_CASE("the flat must lie under the set screw's point") {
    Bench bench;
    trade::Body& body = bench.add_removable(1);
    body.retention = trade::Retention::set_screw;
    body.set_screw = "#8-32";
    body.set_screw_at = about(30'000, 0);
    trade::Pilot& pilot = bench.add_pilot(2);
    pilot.shank_length = about(75'000, 0);
    pilot.has_flat = true;
    // Axis .450 from the end, point .082 wide: .409 to .491.
    pilot.flat_at = about(40'900, 0);
    pilot.flat_length = about(8'200, 0);
    CHECK(bench.kind() == AnswerKind::ready);
    pilot.flat_at = about(40'900, 1);
    CHECK(bench.kind() == AnswerKind::measure_first);
    pilot.flat_at = about(40'901, 0);
    CHECK(bench.kind() == AnswerKind::after_work);
    pilot.flat_length = about(8'199, 0);
    pilot.flat_at = about(40'900, 500);
    CHECK(bench.kind() == AnswerKind::after_work);
    pilot.flat_at.reset();
    CHECK(bench.kind() == AnswerKind::measure_first);
    bench.tools.trials = {{2, 1, Tried::slides_and_holds}};
    CHECK(bench.kind() == AnswerKind::ready);
    pilot.has_flat = false;
    CHECK(bench.kind() == AnswerKind::after_work);
}

// Of 25/64, 13/32 and 27/64 (.421875) none is relied on to cut over.
TEST_CASE("teeth that do not reach the hole leave a ring") {
    Bench bench;
    bench.add_removable(1).bore = about(42'187, 0);
    CHECK(bench.answer().drill == "27/64");
    CHECK(bench.kind() == AnswerKind::make_pilot);
    bench.tools.bodies[0].bore = about(42'187, 1);
    CHECK(bench.kind() == AnswerKind::measure_first);
    bench.tools.bodies[0].bore = about(42'188, 0);
    CHECK(bench.kind() == AnswerKind::closest);
    CHECK(bench.verdict("teeth reach the hole") == Verdict::fail);
    // Short by .1481 of .570: more than a quarter.
    bench.tools.bodies[0].bore = about(57'000, 0);
    CHECK(bench.ask().answers.empty());
    // A hole that is there may be any size that its drill leaves: to .4293.
    bench.question.hole.kind = match::HoleKind::drilled;
    bench.question.hole.drill = oracle::fraction_drill("27/64", 27);
    bench.tools.bodies[0].bore = about(42'900, 0);
    CHECK(bench.verdict("teeth reach the hole") == Verdict::unknown);
}

TEST_CASE("what is lent, retired or broken is only closest, and so is what stands in it") {
    Bench bench;
    bench.add_integral(1, 62'500).loan = "a neighbour";
    CHECK(bench.kind() == AnswerKind::closest);
    bench.tools.bodies[0].loan.reset();
    bench.tools.bodies[0].condition = trade::Condition::broken;
    CHECK(bench.kind() == AnswerKind::closest);
    bench.tools.bodies[0].condition = trade::Condition::dull;
    CHECK(bench.kind() == AnswerKind::after_work);
    bench.tools.bodies[0].retired = "worn out";
    bench.add_removable(2);
    bench.add_pilot(3).in_body = 1;
    CHECK(bench.kind() == AnswerKind::make_pilot);
    bench.tools.bodies[0].retired.reset();
    CHECK(bench.ask().answers.at(0).body == 2);
    CHECK(bench.kind() == AnswerKind::ready);
}

TEST_CASE("a pilot that suits no drill fails by its distance from the nearest") {
    Bench bench;
    // 27/64 less .0008: a pilot of .421075 could run, a quarter over that is .52634.
    bench.add_integral(1, 62'500).pilot_dia = about(52'630, 0);
    CHECK(bench.kind() == AnswerKind::closest);
    CHECK_FALSE(bench.answer().drill.has_value());
    CHECK_FALSE(bench.verdict("drill").has_value());
    CHECK(bench.verdict("pilot in the hole") == Verdict::fail);
    bench.tools.bodies[0].pilot_dia = about(52'640, 0);
    CHECK(bench.ask().answers.empty());
}

TEST_CASE("a pilot enters from .0008 under its drill and locates to .010 under") {
    Bench bench;
    const auto running = [&](std::int64_t of_64, std::int64_t pilot) {
        bench.tools.bodies.clear();
        bench.add_integral(1, 170'000).pilot_dia = about(pilot, 0);
        bench.question.screw.head_dia = inches(160'000, 160'000);
        bench.question.hole.kind = match::HoleKind::drilled;
        bench.question.hole.drill = oracle::fraction_drill("", of_64);
        return bench.verdict("pilot in the hole");
    };
    // 1/2; then 17/32, .53125, by .012; then 1-1/16, 1.0625, by .015.
    CHECK(running(32, 49'920) == Verdict::pass);
    CHECK(running(32, 49'921) == Verdict::fail);
    CHECK(running(32, 49'000) == Verdict::pass);
    CHECK(running(32, 48'999) == Verdict::fail);
    CHECK(running(34, 51'925) == Verdict::pass);
    CHECK(running(34, 51'924) == Verdict::fail);
    CHECK(running(68, 104'750) == Verdict::pass);
    CHECK(running(68, 104'749) == Verdict::fail);
}

TEST_CASE("a pilot marked with its drill runs in it, one measured near the edge may not") {
    Bench bench;
    bench.add_integral(1, 62'500).pilot_dia = about(38'812, 150); // .001 to .004 under 25/64
    CHECK(bench.kind() == AnswerKind::ready);
    bench.tools.bodies[0].pilot_dia = about(38'980, 20);
    CHECK(bench.verdict("pilot in the hole") == Verdict::unknown);
}

TEST_CASE("a shoulder's hole is reamed and no drill is chosen for it") {
    Bench bench;
    bench.question.screw.shoulder = true;
    bench.add_integral(1, 62'500).pilot_dia = about(37'300, 0);
    CHECK(bench.kind() == AnswerKind::ready);
    CHECK_FALSE(bench.answer().drill.has_value());
    CHECK(bench.verdict("drill") == Verdict::pass);
    // .375 to .3755 over the pilot: .0008 at least.
    bench.tools.bodies[0].pilot_dia = about(37'420, 0);
    CHECK(bench.verdict("pilot in the hole") == Verdict::pass);
    bench.tools.bodies[0].pilot_dia = about(37'421, 0);
    CHECK(bench.verdict("pilot in the hole") == Verdict::unknown);
    bench.tools.bodies[0].pilot_dia = about(38'850, 0);
    CHECK(bench.verdict("pilot in the hole") == Verdict::fail);
    CHECK_FALSE(bench.verdict("drill").has_value());
}

TEST_CASE("a pilot with a flat is no pair for a body that holds it otherwise") {
    Bench bench;
    bench.add_removable(1).retention = trade::Retention::threaded;
    bench.add_pilot(2);
    CHECK(bench.kind() == AnswerKind::make_pilot);
    CHECK(bench.ask(Form::pairs).answers.empty());
    bench.tools.pilots[0].in_body = 1;
    CHECK(bench.kind() == AnswerKind::measure_first);
    bench.tools.pilots[0].in_body.reset();
    bench.tools.trials = {{2, 1, Tried::slides}};
    CHECK(bench.verdict("pilot shank in the bore") == Verdict::unknown);
    CHECK_FALSE(bench.verdict("set screw on the flat").has_value());
    bench.tools.trials = {{2, 1, Tried::slides_and_holds}};
    CHECK(bench.kind() == AnswerKind::ready);
    // A set screw that is seen holds by itself.
    bench.tools.trials.clear();
    bench.tools.bodies[0].retention.reset();
    CHECK(bench.kind() == AnswerKind::ready);
    bench.tools.bodies[0].set_screw.clear();
    bench.tools.bodies[0].set_screw_at.reset();
    CHECK(bench.verdict("set screw on the flat") == Verdict::unknown);
}

// The tap drill of 3/8-16 is 5/16: it leaves .3125 to .319375.
TEST_CASE("a given hole must let the screw pass, except a tapped one") {
    Bench bench;
    bench.add_integral(1, 62'500).pilot_dia = about(31'050, 0);
    bench.question.hole.kind = match::HoleKind::drilled;
    bench.question.hole.drill = oracle::fraction_drill("5/16", 20);
    CHECK(bench.verdict("drill") == Verdict::fail);
    bench.question.hole.tapped = true;
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.hole = {match::HoleKind::measured, "", {}, inches(37'400, 37'600), false};
    bench.tools.bodies[0].pilot_dia = about(37'150, 0);
    CHECK(bench.verdict("drill") == Verdict::unknown);
}

// .319375 less .3105 is .008875; the head is .562 at most.
TEST_CASE("a screw in its own thread stands off by what the pilot plays in the hole") {
    Bench bench;
    bench.question.hole.kind = match::HoleKind::drilled;
    bench.question.hole.drill = oracle::fraction_drill("5/16", 20);
    bench.question.hole.tapped = true;
    trade::Body& body = bench.add_integral(1, 57'090);
    body.pilot_dia = about(31'050, 0);
    body.cut_dia = about(57'088, 0);
    CHECK(bench.verdict("head in the counterbore") == Verdict::pass);
    body.cut_dia = about(57'087, 0);
    CHECK(bench.verdict("head in the counterbore") == Verdict::unknown);
}

TEST_CASE("a body without any pilot is closest at best") {
    Bench bench;
    bench.add_integral(1, 62'500).pilot_kind = trade::PilotKind::none;
    CHECK(bench.kind() == AnswerKind::closest);
    CHECK(bench.verdict("pilot in the hole") == Verdict::fail);
    CHECK_FALSE(bench.verdict("teeth reach the hole").has_value());
    bench.tools.bodies[0].pilot_kind = trade::PilotKind::unknown;
    CHECK(bench.kind() == AnswerKind::measure_first);
    CHECK(bench.verdict("pilot in the hole") == Verdict::unknown);
}

TEST_CASE("made for the screw comes first, then the drill, then the seat of the pilot") {
    Bench bench;
    bench.publish("ASME B18.3 appendix", "recommended", length::sixty_fourths(40));
    bench.add_removable(1);
    bench.add_removable(2);
    bench.add_integral(3, 59'500); // no published size
    bench.add_pilot(4);
    // In body 2, but for the normal drill.
    bench.add_pilot(5).pilot_dia = about(40'415);
    bench.tools.pilots[1].in_body = 2;
    oracle::OracleReport report = bench.ask();
    REQUIRE(report.answers.size() == 3);
    CHECK(report.answers[0].body == 1);
    CHECK(report.answers[0].pilot == 4);
    CHECK(report.answers[1].body == 2);
    CHECK(report.answers[1].pilot == 4);
    CHECK(report.answers[1].drill == "25/64");
    CHECK(report.answers[2].body == 3);
    CHECK(report.counts[0] == 3);
    CHECK(bench.ask(Form::pairs).counts[0] == 5);
    // For the close drill too: it comes before the free one.
    bench.tools.pilots[1].pilot_dia = about(38'850);
    report = bench.ask();
    CHECK(report.answers[0].body == 2);
    CHECK(report.answers[0].pilot == 5);
}

TEST_CASE("the drill comes before the size class, size on size last, a marking before all") {
    Bench bench;
    bench.shop.drills.insert(bench.shop.drills.begin(), oracle::fraction_drill("3/8", 24));
    bench.add_integral(1, 62'450).pilot_dia = about(40'415); // recommended, normal
    bench.add_integral(2, 59'500);                           // tool size, close
    bench.add_integral(3, 62'450).pilot_dia = about(37'300); // recommended, 3/8
    const auto order = [&] {
        std::vector<std::int64_t> bodies;
        for (const oracle::OracleAnswer& answer : bench.ask().answers) {
            CHECK(answer.kind == AnswerKind::ready);
            bodies.push_back(answer.body);
        }
        return bodies;
    };
    CHECK(order() == std::vector<std::int64_t>{2, 1, 3});
    bench.question.screw.form_words = {"cap screw"};
    bench.tools.bodies[2].marking = "3/8 cap screw";
    CHECK(order() == std::vector<std::int64_t>{3, 2, 1});
    bench.tools.bodies[2].marking = "3/8";
    CHECK(order() == std::vector<std::int64_t>{2, 1, 3});
}

// Cutter .59325 is the handbook's for a .562 head; its pilot 3/8 measures .371 to .375.
TEST_CASE("in another hole a tool is made for the screw if its pilot is the published one") {
    Bench bench;
    trade::PublishedTool tool;
    tool.cut_dia.listed = inches(59'400, 59'400);
    tool.pilot_dia.listed = inches(37'500, 37'500);
    bench.question.screw.tools = {tool};
    bench.shop.drills = {oracle::fraction_drill("3/8", 24)};
    bench.add_integral(1, 62'500).pilot_dia = about(37'200, 0);
    bench.add_integral(2, 59'400).pilot_dia = about(37'099, 0);
    CHECK(bench.answer().body == 1); // .0039 under 3/8, but .001 under the least that it measures
    bench.tools.bodies[1].pilot_dia = about(37'100, 0);
    CHECK(bench.answer().body == 2);
}

TEST_CASE("of drills alike the fraction comes first") {
    Bench bench;
    bench.shop.drills = {{"0.391 twin", trade::DrillKind::metric, length::sixty_fourths(25)},
                         oracle::fraction_drill("25/64", 25)};
    bench.add_integral(1, 62'500);
    CHECK(bench.answer().drill == "25/64");
    bench.shop.drills.pop_back();
    CHECK(bench.answer().drill == "0.391 twin");
}

TEST_CASE("only tools of the set asked for are judged") {
    Bench bench;
    bench.add_removable(1).set = "works";
    bench.add_pilot(2).set = "school";
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.set = "works";
    CHECK(bench.kind() == AnswerKind::make_pilot);
    bench.question.set = "school";
    CHECK(bench.ask().answers.empty());
}
