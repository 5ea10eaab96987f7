// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The rules of head, pilot and hole one by one, at their edges.
#include <doctest/doctest.h>

#include "case.hpp"

using namespace bench;
using match::Verdict;

TEST_CASE("the head must clear the cutter by five thousandths") {
    struct Row {
        Range cut;
        Verdict verdict;
    };
    for (const auto& row :
         {Row{tenths(4740, 4750), Verdict::pass}, Row{tenths(4739, 4750), Verdict::unknown},
          Row{tenths(4600, 4620), Verdict::unknown}, Row{tenths(4600, 4619), Verdict::fail}}) {
        auto c = integral();
        c.body.cut_dia = known(row.cut);
        CAPTURE(row.cut.lo.nm());
        CHECK(c.judge(match::judge_head).verdict == row.verdict);
    }
}

TEST_CASE("a pilot well under the screw asks for a larger cutter") {
    auto c = integral();
    c.body.cut_dia = known(tenths(4900, 4900));
    c.body.pilot_dia = known(tenths(2900, 2910)); // .0225 under the screw: head + .0225 = .4915
    CHECK(c.judge(match::judge_head).verdict == Verdict::unknown);
    c.body.cut_dia = known(tenths(4915, 4915));
    CHECK(c.judge(match::judge_head).verdict == Verdict::pass);
}

TEST_CASE("a cutter is too large past an eighth over the published counterbore or a quarter of the "
          "head") {
    auto c = integral(); // published .53125; a quarter of .469 is .11725, less than 1/8
    c.body.cut_dia = known(tenths(6484, 6484));
    CHECK(c.judge(match::judge_head).verdict == Verdict::pass);
    c.body.cut_dia = known(tenths(6486, 6486));
    const auto finding = c.judge(match::judge_head);
    CHECK(finding.verdict == Verdict::fail);
    CHECK(finding.shortfall.missing * 100 < finding.shortfall.needed);
}

TEST_CASE("a hole over 85 percent of the smallest head leaves no seat") {
    auto c = integral(); // .85 x .457 = .38845
    c.hole = tenths(3870, 3884);
    CHECK(c.judge(match::judge_head).verdict == Verdict::pass);
    c.hole = tenths(3870, 3885);
    CHECK(c.judge(match::judge_head).verdict == Verdict::fail);
}

TEST_CASE("a cutter or head of unknown size is unknown") {
    auto c = integral();
    c.body.cut_dia.reset();
    CHECK(c.judge(match::judge_head).verdict == Verdict::unknown);
    c = integral();
    c.question.screw.head_dia.reset();
    CHECK(c.judge(match::judge_head).verdict == Verdict::unknown);
}

TEST_CASE("a washer takes the place of a smaller head") {
    auto c = integral();
    c.question.washer = match::Washer{"plain", tenths(5500, 5600), {}};
    c.body.cut_dia = known(tenths(5649, 5700));
    CHECK(c.judge(match::judge_head).verdict == Verdict::unknown);
    c.body.cut_dia = known(tenths(5650, 5700));
    CHECK(c.judge(match::judge_head).verdict == Verdict::pass);
}

TEST_CASE("in a measured hole the pilot is .0008 to .010 under it over the whole range") {
    struct Row {
        Range pilot;
        Verdict verdict;
    };
    for (const auto& row :
         {Row{tenths(3300, 3392), Verdict::pass}, // hole .340 to .340
          Row{tenths(3299, 3390), Verdict::unknown}, Row{tenths(3300, 3393), Verdict::unknown},
          Row{tenths(3393, 3394), Verdict::fail}, Row{tenths(3200, 3299), Verdict::fail}}) {
        auto c = integral();
        c.hole = tenths(3400, 3400);
        c.body.pilot_dia = known(row.pilot);
        CAPTURE(row.pilot.lo.nm());
        CHECK(c.judge(match::judge_running).verdict == row.verdict);
    }
}

TEST_CASE("under a drill the pilot is judged by the drill's own size, not by what it cuts over") {
    struct Row {
        Range pilot;
        Verdict verdict;
    };
    for (const auto& row : // drill 21/64 = .328125
         {Row{tenths(3182, 3273), Verdict::pass}, Row{tenths(3181, 3273), Verdict::unknown},
          Row{tenths(3182, 3274), Verdict::unknown}, Row{tenths(3274, 3280), Verdict::fail}}) {
        auto c = integral();
        c.body.pilot_dia = known(row.pilot);
        CAPTURE(row.pilot.hi.nm());
        CHECK(c.judge(match::judge_running).verdict == row.verdict);
    }
}

TEST_CASE("a larger hole takes a pilot that is farther under it") {
    auto c = integral();
    c.body.pilot_dia = known(tenths(5130, 5130));
    c.hole = tenths(5250, 5250); // .012 under, over 1/2
    CHECK(c.judge(match::judge_running).verdict == Verdict::pass);
    c.body.pilot_dia = known(tenths(10100, 10100));
    c.hole = tenths(10250, 10250); // .015 under, over 1
    CHECK(c.judge(match::judge_running).verdict == Verdict::pass);
    c.hole = tenths(10251, 10251);
    CHECK(c.judge(match::judge_running).verdict == Verdict::fail);
}

TEST_CASE("in a hole for the tap the cutter may sit off by the pilot's play") {
    auto c = integral();
    c.question.screw.head_dia = tenths(3700, 3750);
    c.question.screw.screw_dia = length::exactly(length::sixty_fourths(16));
    c.question.hole.kind = match::HoleKind::drilled;
    c.question.hole.drill = {"13/64", trade::DrillKind::fraction,
                             length::sixty_fourths(13)}; // to .2071
    c.question.hole.tapped = true;
    c.body.pilot_dia = known(tenths(1970, 1970)); // .0101 under the largest hole
    const auto job = match::make_job(c.question, c.shop);
    const auto facts = trade::facts_of(c.body);
    const match::Triple triple{&facts, nullptr, &job.holes.front(), {}};
    CHECK(match::clearance_needed(job, triple) ==
          length::sixty_fourths(13) + tenths(40) -
              tenths(1970)); // the drill cuts .004 over at most
}

TEST_CASE("a pilot that nobody saw to be integral is at best unknown") {
    auto c = integral();
    c.body.pilot_kind = trade::PilotKind::unknown;
    CHECK(c.judge(match::judge_running).verdict == Verdict::unknown);
    c.body.pilot_kind = trade::PilotKind::none;
    CHECK(c.judge(match::judge_running).verdict == Verdict::fail);
}

TEST_CASE("a hole that is there must be over the screw, unless it is to be tapped") {
    auto c = integral();
    c.hole = tenths(3125, 3130);
    CHECK(c.judge(match::judge_drill).verdict == Verdict::pass);
    c.hole = tenths(3124, 3130);
    CHECK(c.judge(match::judge_drill).verdict == Verdict::unknown);
    c.hole = tenths(3100, 3124);
    CHECK(c.judge(match::judge_drill).verdict == Verdict::fail);
    c.question.hole.tapped = true;
    c.hole.reset();
    c.question.hole = {
        match::HoleKind::drilled, "tap", {"F", trade::DrillKind::letter, tenths(2570)}, {}, true};
    const auto job = match::make_job(c.question, c.shop);
    const auto facts = trade::facts_of(c.body);
    CHECK(match::judge_drill(job, {&facts, nullptr, &job.holes[0], {}}).verdict == Verdict::pass);
}
