// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The ten rules one by one, at their edges.
#include <doctest/doctest.h>

#include "bench.hpp"
#include "match/rules.hpp"

using namespace bench;
using match::Verdict;

namespace {

// A triple whose hole is the close one, kept together with what it points to.
struct Case {
    match::Question question;
    match::Shop shop = bench::shop();
    trade::Body body;
    trade::Pilot pilot;
    bool with_pilot = false;
    std::optional<trade::Tried> tried;
    std::optional<Range> hole; // given as measured
    const trade::Body* home = nullptr;

    template <class Judge>
    match::Finding judge(Judge by_rule) {
        if (hole)
            question.hole = {match::HoleKind::measured, "", {}, *hole, false};
        const auto job = match::make_job(question, shop);
        const match::CandidateHole* close = nullptr;
        for (const auto& candidate : job.holes)
            if (hole || candidate.published == match::Published::close)
                close = &candidate;
        const auto body_facts = trade::facts_of(body);
        const auto pilot_facts = trade::facts_of(pilot, home);
        return by_rule(job, {&body_facts, with_pilot ? &pilot_facts : nullptr, close, tried});
    }
};

Case integral() {
    Case c;
    c.question = question(newer());
    c.body = integral_body();
    return c;
}

Case removable() {
    auto c = integral();
    c.body = removable_body();
    c.pilot = pilot();
    c.with_pilot = true;
    return c;
}

} // namespace

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

TEST_CASE("a pilot shank slips with two tenths to twenty-five tenths") {
    auto c = removable();
    CHECK(c.judge(match::judge_slip).verdict == Verdict::pass);
    c.pilot.shank_dia = known(tenths(1867, 1874));
    CHECK(c.judge(match::judge_slip).verdict == Verdict::unknown);
    c.pilot.shank_dia = known(tenths(1880, 1881));
    CHECK(c.judge(match::judge_slip).verdict == Verdict::fail);
    c.home = &c.body;
    CHECK(c.judge(match::judge_slip).verdict == Verdict::unknown);
}

TEST_CASE("a trial outranks the measurement of shank and bore") {
    auto c = removable();
    c.pilot.shank_dia = known(tenths(1880, 1881));
    c.tried = trade::Tried::slides;
    CHECK(c.judge(match::judge_slip).verdict == Verdict::pass);
    CHECK_FALSE(c.judge(match::judge_slip).work);
    c.tried = trade::Tried::binds;
    CHECK(c.judge(match::judge_slip).verdict == Verdict::pass);
    CHECK(c.judge(match::judge_slip).work);
    c.pilot.shank_dia = known(tenths(1867, 1869));
    for (const auto tried : {trade::Tried::loose, trade::Tried::will_not_go}) {
        c.tried = tried;
        CHECK(c.judge(match::judge_slip).verdict == Verdict::fail);
    }
}

TEST_CASE("a shank longer than the bore is shortened, unless it was seen to slide") {
    auto c = removable();
    c.pilot.shank_length = known(tenths(6301, 6310));
    CHECK(c.judge(match::judge_slip).work);
    c.tried = trade::Tried::slides_and_holds;
    CHECK_FALSE(c.judge(match::judge_slip).work);
}

TEST_CASE("the flat must cover the set screw's point") {
    auto c = removable(); // point of a #8: .041 either side of .399 to .402 from the end
    CHECK(c.judge(match::judge_flat).verdict == Verdict::pass);
    CHECK_FALSE(c.judge(match::judge_flat).work);
    c.pilot.flat_length = known(tenths(1300, 1500));
    CHECK(c.judge(match::judge_flat).verdict == Verdict::unknown);
    c.pilot.flat_length = known(tenths(700, 800));
    CHECK(c.judge(match::judge_flat).verdict == Verdict::pass);
    CHECK(c.judge(match::judge_flat).work);
}

TEST_CASE("a shank without a flat is filed, an unknown flat is unknown until it was tried") {
    auto c = removable();
    c.pilot.flat_at.reset();
    CHECK(c.judge(match::judge_flat).verdict == Verdict::unknown);
    c.tried = trade::Tried::slides;
    CHECK(c.judge(match::judge_flat).verdict == Verdict::unknown);
    c.tried = trade::Tried::slides_and_holds;
    CHECK(c.judge(match::judge_flat).verdict == Verdict::pass);
    c.tried.reset();
    c.pilot.has_flat = false;
    CHECK(c.judge(match::judge_flat).verdict == Verdict::pass);
    CHECK(c.judge(match::judge_flat).work);
}

TEST_CASE("a bore larger than the hole leaves a ring") {
    auto c = removable();
    c.hole = tenths(1877, 1880);
    CHECK(c.judge(match::judge_teeth).verdict == Verdict::pass);
    c.hole = tenths(1876, 1880);
    CHECK(c.judge(match::judge_teeth).verdict == Verdict::unknown);
    c.hole = tenths(1870, 1874);
    CHECK(c.judge(match::judge_teeth).verdict == Verdict::fail);
}

TEST_CASE("the reach is held against head height, washer and the depth below the surface") {
    auto c = integral(); // .3125 + .015625
    c.body.reach = known(tenths(3282, 3300));
    CHECK(c.judge(match::judge_depth).verdict == Verdict::pass);
    c.body.reach = known(tenths(3281, 3300));
    CHECK(c.judge(match::judge_depth).verdict == Verdict::unknown);
    c.body.reach = known(tenths(3200, 3281));
    CHECK(c.judge(match::judge_depth).verdict == Verdict::fail);
    c.question.washer = match::Washer{"plain", tenths(4000, 4100), length::exactly(tenths(650))};
    c.body.reach = known(tenths(3932, 4000));
    CHECK(c.judge(match::judge_depth).verdict == Verdict::pass);
    c.question.washer->thickness.reset();
    CHECK(c.judge(match::judge_depth).verdict == Verdict::unknown);
}

TEST_CASE("an unrecorded reach is the cutting diameter of a counterbore, and unknown of others") {
    auto c = integral();
    c.body.reach.reset();
    CHECK(c.judge(match::judge_depth).verdict == Verdict::pass);
    c.body.kind = trade::BodyKind::unknown;
    CHECK(c.judge(match::judge_depth).verdict == Verdict::unknown);
    c.body.kind = trade::BodyKind::spotfacer;
    CHECK(c.judge(match::judge_depth).verdict == Verdict::fail);
    CHECK(c.judge(match::judge_depth).shortfall.missing == 250); // thousandths: last of the closest
}

TEST_CASE("a spotface is 1/16 deep whatever is asked below the surface, and any tool cleans up") {
    auto c = integral();
    c.question.screw.hex = true;
    c.question.below = length::sixty_fourths(8);
    c.body.reach.reset();
    c.body.kind = trade::BodyKind::spotfacer;
    CHECK(c.judge(match::judge_depth).verdict == Verdict::pass);
    c.body.reach = known(tenths(625, 630));
    CHECK(c.judge(match::judge_depth).verdict == Verdict::pass);
    c.body.reach = known(tenths(600, 624));
    CHECK(c.judge(match::judge_depth).verdict == Verdict::fail);
}

TEST_CASE("a blind hole must have room for the pilot below the seat") {
    auto c = integral(); // .328125 + .310 to .315
    c.question.blind = length::exactly(tenths(6432));
    CHECK(c.judge(match::judge_guidance).verdict == Verdict::pass);
    c.question.blind = length::exactly(tenths(6400));
    CHECK(c.judge(match::judge_guidance).verdict == Verdict::unknown);
    c.question.blind = length::exactly(tenths(6380));
    CHECK(c.judge(match::judge_guidance).verdict == Verdict::fail);
    c.body.pilot_length.reset();
    CHECK(c.judge(match::judge_guidance).verdict == Verdict::unknown);
}

TEST_CASE("thin work must be thicker than the counterbore and guide half a pilot diameter") {
    auto c = integral();
    c.question.thick = length::exactly(tenths(3282));
    CHECK(c.judge(match::judge_guidance).verdict == Verdict::pass);
    c.question.thick = length::exactly(tenths(3281));
    CHECK(c.judge(match::judge_guidance).verdict == Verdict::fail);
    c.question.thick = length::exactly(tenths(5000));
    c.body.pilot_length = known(tenths(1600, 1630));
    CHECK(c.judge(match::judge_guidance).verdict == Verdict::fail);
}

TEST_CASE("a pilot length that nobody recorded is one diameter where the work has room for it") {
    auto c = integral(); // depth .3282, pilot to .3272
    c.body.pilot_length.reset();
    c.question.thick = length::exactly(tenths(6560));
    CHECK(c.judge(match::judge_guidance).verdict == Verdict::pass);
    c.question.thick = length::exactly(tenths(6550));
    CHECK(c.judge(match::judge_guidance).verdict == Verdict::unknown);
}

TEST_CASE("a body that holds by a thread takes no pilot with a flat, and others must be tried") {
    auto c = removable();
    c.body.retention = trade::Retention::threaded;
    c.pilot.has_flat = true;
    CHECK(c.judge(match::judge_slip).verdict == Verdict::fail);
    c.pilot.has_flat.reset();
    CHECK(c.judge(match::judge_slip).verdict == Verdict::unknown);
    c.tried = trade::Tried::slides;
    CHECK(c.judge(match::judge_slip).verdict == Verdict::unknown);
    c.tried = trade::Tried::slides_and_holds;
    CHECK(c.judge(match::judge_slip).verdict == Verdict::pass);
}

TEST_CASE("a set screw that is recorded says how the body holds") {
    auto c = removable();
    c.body.retention.reset();
    CHECK(c.judge(match::judge_flat).verdict == Verdict::pass);
    c.body.set_screw.clear();
    c.body.set_screw_at.reset();
    CHECK(c.judge(match::judge_flat).verdict == Verdict::unknown);
}

TEST_CASE("the teeth rely on no more than a chosen drill's own size") {
    auto c = removable();
    c.body.bore = known(tenths(3281, 3281)); // 21/64 = .328125
    CHECK(c.judge(match::judge_teeth).verdict == Verdict::pass);
    c.body.bore = known(tenths(3282, 3282)); // the drill may cut so far over, or not
    CHECK(c.judge(match::judge_teeth).verdict == Verdict::fail);
    c.body.bore = known(tenths(3280, 3284)); // measured, it may be small enough
    CHECK(c.judge(match::judge_teeth).verdict == Verdict::unknown);
}

TEST_CASE("retired, lent and broken tools are not in hand") {
    auto c = removable();
    CHECK(c.judge(match::judge_in_hand).verdict == Verdict::pass);
    auto gone = removable_body();
    gone.number = 9;
    c.home = &gone;
    CHECK(c.judge(match::judge_in_hand).verdict == Verdict::pass);
    gone.loan = "night class";
    CHECK(c.judge(match::judge_in_hand).verdict == Verdict::fail);
    c.home = nullptr;
    c.pilot.condition = trade::Condition::broken;
    CHECK(c.judge(match::judge_in_hand).verdict == Verdict::fail);
    c = removable();
    c.body.retired = "scrapped";
    CHECK(c.judge(match::judge_in_hand).verdict == Verdict::fail);
}

TEST_CASE("a straight shank goes in the chuck and a taper in its own spindle") {
    auto c = integral();
    c.question.machine = trade::Machine{"bench drill", tenths(620, 5000), 2};
    CHECK(c.judge(match::judge_spindle).verdict == Verdict::pass);
    c.body.shank_dia = known(tenths(5001, 5100));
    CHECK(c.judge(match::judge_spindle).verdict == Verdict::fail);
    c.body.shank_kind = "Morse 2";
    CHECK(c.judge(match::judge_spindle).verdict == Verdict::pass);
    c.body.shank_kind = "Morse 3";
    CHECK(c.judge(match::judge_spindle).verdict == Verdict::fail);
    c.body.shank_kind = "bayonet";
    CHECK(c.judge(match::judge_spindle).verdict == Verdict::unknown);
}
