// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The rules of shank, flat, teeth, depth and the rest one by one, at their edges.
#include <doctest/doctest.h>

#include "case.hpp"

using namespace bench;
using match::Verdict;

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
