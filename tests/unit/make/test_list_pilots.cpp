// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The pilots of the make-list against what the trade says: always under their drill; and what is
// left to measuring and trying.
#include <doctest/doctest.h>

#include "cases.hpp"
#include "list_bench.hpp"
#include "match/finding.hpp"

using namespace list_bench;

namespace {

// What the trade says (common practice): from .0008 in under the drill, so that it enters a hole
// drilled to size, to .010 in, .012 over 1/2 in, .015 over 1 in.
Length most_under(Length drill) {
    if (drill <= inches_e5(50'000))
        return inches_e5(1'000);
    return drill <= inches_e5(100'000) ? inches_e5(1'200) : inches_e5(1'500);
}

// A body of the cutter and a 3/16 bore that is known to .0002.
ListRack rack_of_one(Length cut) {
    trade::Body body;
    body.number = 1;
    body.kind = trade::BodyKind::counterbore;
    body.pilot_kind = trade::PilotKind::removable;
    body.cut_dia = read_as(cut, inches_e5(20));
    body.bore = read_as(inches_e5(18'750), inches_e5(20));
    body.retention = trade::Retention::set_screw;
    ListRack rack;
    rack.body_list.push_back(body);
    return rack;
}

bool only_shank_is_open(const match::Answer& answer) {
    return std::all_of(answer.rules.begin(), answer.rules.end(), [](const match::Reason& reason) {
        return reason.result != match::Verdict::unknown ||
               reason.rule == match::to_text(match::Rule::slip) ||
               reason.rule == match::to_text(match::Rule::flat);
    });
}

make::Wish wish_with_hole(const std::string& screw, const std::string& hole) {
    auto wish = wish_for(screw);
    wish.question.hole = match::parse_hole(hole, wish.question.screw, the_shop().tables,
                                           the_shop().shop.practice, length::Unit::inch);
    return wish;
}

} // namespace

TEST_CASE("every pilot is under each of its drills at both ends of its limits, and runs in each") {
    std::mt19937_64 random(18);
    int shared = 0, alone = 0;
    for (int round = 0; round < cases::some(300); ++round) {
        const auto rack = random_rack(random);
        for (const auto& piece : list_of(random_wishes(random), rack).pieces) {
            std::set<Length> drills;
            for (const auto& served : piece.serves) {
                CAPTURE(round);
                CAPTURE(served.screw);
                const Length drill = served.drill ? served.drill->diameter : served.hole.lo;
                const Length largest = served.drill ? drill : served.hole.hi;
                drills.insert(drill);
                CHECK(piece.pilot.hi + inches_e5(80) <= drill);
                CHECK(piece.pilot.lo + most_under(drill) >= largest);
            }
            CHECK(piece.pilot.hi - piece.pilot.lo >=
                  inches_e5(100)); // no hole here asks for closer
            ++(drills.size() > 1 ? shared : alone);
        }
    }
    CHECK(alone > cases::some(300));
    CHECK(shared > 30);
}

TEST_CASE("a pilot for one drill is .002 to .004 in under it") {
    const auto list =
        list_of({wish_with_hole("7/16-14 shcs", "29/64")}, rack_of_one(inches_e5(71'875)));
    REQUIRE(list.pieces.size() == 1);
    // 29/64 is .453125: .449125 to .451125.
    CHECK(list.pieces[0].pilot == Range{inches_e5(44'920), inches_e5(45'110)});
    CHECK(list.pieces[0].serves[0].drill->name == "29/64");
}

TEST_CASE("a hole known to no more than +-.004 in gets a pilot of closer limits") {
    // .3783 to .3863: from .010 under the largest to .0008 under the least is .3763 to .3775; a
    // micrometer's .0002 at both ends leaves .3765 to .3773.
    const auto rack = rack_of_one(inches_e5(62'500));
    const auto list = list_of({wish_with_hole("3/8-16 shcs", ".3823 +-.004")}, rack);
    CHECK(list.cannot.empty());
    REQUIRE(list.pieces.size() == 1);
    CHECK(list.pieces[0].pilot == Range{inches_e5(37'650), inches_e5(37'730)});
    // +-.0043 leaves .3768 to .3770, as close as can be ground; +-.0044 nothing.
    const auto closest = list_of({wish_with_hole("3/8-16 shcs", ".3823 +-.0043")}, rack);
    REQUIRE(closest.pieces.size() == 1);
    CHECK(closest.pieces[0].pilot == Range{inches_e5(37'680), inches_e5(37'700)});
    CHECK(list_of({wish_with_hole("3/8-16 shcs", ".3823 +-.0044")}, rack).pieces.empty());
}

TEST_CASE("a screw that no measurement settles gets its piece") {
    // The spread is the drill's: only a pilot helps.
    const auto list = list_of({wish_for("#8-32 shcs 1960")}, rack_of_one(inches_e5(31'250)));
    CHECK(list.settle_first.empty());
    CHECK(list.cannot.empty());
    REQUIRE(list.pieces.size() == 1);
    // The bore is .1877 at most, so 12 (.189) is the least drill that leaves no ring.
    for (const auto& served : list.pieces[0].serves)
        CHECK(served.drill->diameter >= inches_e5(18'900));
}

TEST_CASE("what is to be settled first has a pilot there, and is not ready without it") {
    std::mt19937_64 random(19);
    int settled = 0;
    for (int round = 0; round < cases::some(100); ++round) {
        auto rack = random_rack(random);
        for (const auto& body : rack.body_list) { // shanks nobody has measured closely
            trade::Pilot pilot;
            pilot.number = 100 + body.number;
            pilot.pilot_dia = read_as(
                inches_e5(10'000 + static_cast<std::int64_t>(random() % 40'000)), inches_e5(20));
            pilot.shank_dia = read_as(body.bore->range.lo - inches_e5(80), inches_e5(150));
            rack.pilot_list.push_back(pilot);
        }
        const auto wishes = random_wishes(random);
        for (const auto& settle : list_of(wishes, rack).settle_first) {
            CHECK(settle.answer.kind == AnswerKind::measure_first);
            REQUIRE(settle.answer.pilot);
            if (!only_shank_is_open(settle.answer))
                continue; // the head or the cutter is to be measured too
            // The trial that it names brings it to ready.
            ListRack tried = rack;
            tried.trial_list.push_back(
                {*settle.answer.pilot, settle.answer.body, trade::Tried::slides_and_holds});
            CHECK(ready_in(wish_named(wishes, settle.screw), tried, settle.answer.body));
            ++settled;
        }
    }
    CHECK(settled > 20);
}
