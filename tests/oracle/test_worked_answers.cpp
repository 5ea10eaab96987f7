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
    CHECK(bench.answer().drill == "21/64");
    CHECK(bench.answer().other_pilots == 0);
    bench.add_pilot(3);
    CHECK(bench.answer().pilot == 2);
    CHECK(bench.answer().other_pilots == 1);
}

TEST_CASE("without a pilot one is made, and an unknown bore is measured first") {
    Bench bench;
    bench.add_removable(1);
    CHECK(bench.kind() == AnswerKind::make_pilot);
    CHECK(bench.answer().drill == "21/64");
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

TEST_CASE("teeth that do not reach the hole leave a ring") {
    Bench bench;
    bench.add_removable(1).bore = about(36'000, 0);
    // 23/64 leaves .3621 to .3666: the bore is no larger than that hole alone.
    CHECK(bench.answer().drill == "23/64");
    CHECK(bench.kind() == AnswerKind::make_pilot);
    bench.tools.bodies[0].bore = about(36'700, 0);
    CHECK(bench.kind() == AnswerKind::closest);
    CHECK(bench.verdict("teeth reach the hole") == Verdict::fail);
    bench.tools.bodies[0].bore = about(49'000, 0);
    CHECK(bench.ask().answers.empty());
}

TEST_CASE("what is lent, retired or broken is only closest, and so is what stands in it") {
    Bench bench;
    bench.add_integral(1, 53'125).loan = "a neighbour";
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

TEST_CASE("a pilot that suits no drill fails by its distance from the nearest hole") {
    Bench bench;
    bench.add_integral(1, 53'125).pilot_dia = about(25'000, 0);
    CHECK(bench.kind() == AnswerKind::closest);
    CHECK_FALSE(bench.answer().drill.has_value());
    CHECK_FALSE(bench.verdict("drill").has_value());
    CHECK(bench.verdict("pilot in the hole") == Verdict::fail);
    // 21/64 leaves .3308 at least: a pilot of .3208 could run, three quarters of that cannot.
    bench.tools.bodies[0].pilot_dia = about(24'050, 0);
    CHECK(bench.ask().answers.empty());
}

TEST_CASE("a given hole must let the screw pass, except a tapped one") {
    Bench bench;
    bench.add_integral(1, 53'125).pilot_dia = about(25'500, 0);
    bench.question.hole.kind = match::HoleKind::drilled;
    bench.question.hole.drill = {"F", trade::DrillKind::letter, length::thousandths(257)};
    CHECK(bench.verdict("drill") == Verdict::fail);
    bench.question.hole.tapped = true;
    CHECK(bench.kind() == AnswerKind::ready);
    bench.question.hole = {match::HoleKind::measured, "", {}, inches(31'200, 31'300), false};
    bench.tools.bodies[0].pilot_dia = about(30'800, 0);
    CHECK(bench.verdict("drill") == Verdict::unknown);
}

// Head .469, cutter .490: .021 over it. A .255 pilot under a .3125 screw would ask for .0575.
TEST_CASE("a screw in its own thread does not float over the pilot") {
    Bench bench;
    bench.add_integral(1, 49'000).pilot_dia = about(25'500, 0);
    bench.question.hole.kind = match::HoleKind::drilled;
    bench.question.hole.drill = {"F", trade::DrillKind::letter, length::thousandths(257)};
    bench.question.hole.tapped = true;
    CHECK(bench.verdict("head in the counterbore") == Verdict::pass);
    CHECK(bench.kind() == AnswerKind::ready);
}

TEST_CASE("a body without any pilot is closest at best") {
    Bench bench;
    bench.add_integral(1, 53'125).pilot_kind = trade::PilotKind::none;
    CHECK(bench.kind() == AnswerKind::closest);
    CHECK(bench.verdict("pilot in the hole") == Verdict::fail);
    CHECK_FALSE(bench.verdict("teeth reach the hole").has_value());
    bench.tools.bodies[0].pilot_kind = trade::PilotKind::unknown;
    CHECK(bench.kind() == AnswerKind::measure_first);
    CHECK(bench.verdict("pilot in the hole") == Verdict::unknown);
}

TEST_CASE("the size of the cutter comes before the seat of the pilot, and that before the drill") {
    Bench bench;
    bench.publish("ASME B18.3 appendix", "recommended", length::sixty_fourths(34));
    bench.add_removable(1);
    bench.add_removable(2);
    bench.add_integral(3, 50'500);
    bench.add_pilot(4);
    // In body 2, but for the normal drill.
    bench.add_pilot(5).pilot_dia = about(34'350);
    bench.tools.pilots[1].in_body = 2;
    const oracle::OracleReport report = bench.ask();
    REQUIRE(report.answers.size() == 3);
    CHECK(report.answers[0].body == 2);
    CHECK(report.answers[0].pilot == 5);
    CHECK(report.answers[0].drill == "11/32");
    CHECK(report.answers[1].body == 1);
    CHECK(report.answers[1].pilot == 4);
    CHECK(report.answers[2].body == 3);
    CHECK(report.counts[0] == 3);
    CHECK(bench.ask(Form::pairs).counts[0] == 5);
}

TEST_CASE("of drills alike the fraction comes first") {
    Bench bench;
    bench.shop.drills = {{"0.328 twin", trade::DrillKind::metric, length::sixty_fourths(21)},
                         oracle::fraction_drill("21/64", 21)};
    bench.add_integral(1, 53'125);
    CHECK(bench.answer().drill == "21/64");
    bench.shop.drills.pop_back();
    CHECK(bench.answer().drill == "0.328 twin");
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
