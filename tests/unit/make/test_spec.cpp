// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A piece made to its specification passes the rules that it will be judged by, and says what it
// cannot know.
#include <doctest/doctest.h>

#include <algorithm>

#include "bench.hpp"
#include "cases.hpp"
#include "make/spec_dimensions.hpp"
#include "make/spec_words.hpp"
#include "match/rules.hpp"
#include "random_piece.hpp"
#include "spec_bench.hpp"

using bench::known;
using bench::tenths;
using length::Length;
using length::Range;
using length::Unit;
using match::Verdict;
using spec_bench::plain_piece;
using spec_bench::says;

namespace {

// A made size that was read with a micrometer.
trade::Dimension read(Length size) {
    return known({size - tenths(2), size + tenths(2)});
}

struct Bench {
    match::Shop shop = bench::shop();
    match::Question question = bench::question(bench::newer());
    match::Job job = match::make_job(question, shop);
};

// Every pilot that the specification of the flat allows: each limit at either end, then all at
// once.
std::vector<trade::Pilot> pilots_allowed(const make::Spec& spec) {
    const auto& shank = *spec.shank_length.limits;
    const auto& at = *spec.flat_at->limits;
    const auto& length = *spec.flat_length->limits;
    std::vector<trade::Pilot> pilots;
    const auto add = [&pilots](Range shank_length, Range flat_at, Range flat_length) {
        trade::Pilot pilot;
        pilot.has_flat = true;
        pilot.shank_length = known(shank_length);
        pilot.flat_at = known(flat_at);
        pilot.flat_length = known(flat_length);
        pilots.push_back(pilot);
    };
    for (const Length a : {shank.lo, shank.hi})
        for (const Length b : {at.lo, at.hi})
            for (const Length c : {length.lo, length.hi})
                add({a, a}, {b, b}, {c, c});
    add(shank, at, length);
    return pilots;
}

} // namespace

TEST_CASE("the plain case comes out as by hand") {
    const auto spec = random_piece::specify(plain_piece(), Unit::inch);
    CHECK(spec.form == make::Form::shoulder);
    CHECK(spec.pilot_dia.limits == tenths(3250, 3260));
    // .326 up to the next 1/32 is 11/32 = .34375; .010 either way.
    CHECK(spec.pilot_length.limits == Range{length::inches_e5(33375), length::inches_e5(35375)});
    CHECK(spec.shank_dia.limits == tenths(1863, 1868));
    // .620 - .03125 = .58875, down to .585; +0 -.010.
    CHECK(spec.shank_length.limits == tenths(5750, 5850));
    // #8 is .164, its point .082; the axis .585 - .201 = .384 at most and .575 - .199 - ... at
    // least .575 - .201 = .374; the point begins at .374 - .041 = .333; less 1/32 is .30175, down
    // to .300.
    CHECK(spec.flat_at->limits == tenths(2900, 3000));
    // The point ends at .585 - .199 + .041 = .427; 1/32 more is .45825; from .290 that is .16825.
    // It should reach .170 and may be .020 longer, but must end before the undercut: .575 - .086 is
    // .489, which from .300 is .189, down to .185; and .020 less.
    CHECK(spec.flat_length->limits == tenths(1650, 1850));
    CHECK(spec.flat_depth->limits == tenths(200, 250));
    // .326 + 1/64 = .341625: the next sixteenth is 3/8.
    CHECK(spec.stock_dia == length::sixty_fourths(24));
    // .35375 + .585 + 1/16 = 1.00125, up to 1-1/32.
    CHECK(spec.cut_length == length::sixty_fourths(66));
}

TEST_CASE("in millimetres every limit is a whole division of the tool that reads it") {
    const auto spec = random_piece::specify(plain_piece(), Unit::millimetre);
    CHECK(spec.pilot_dia.limits->lo.nm() % 1000 == 0);
    for (const auto* dimension : make::dimensions_of(spec)) {
        CAPTURE(dimension->name);
        REQUIRE(dimension->limits);
        CHECK(dimension->limits->lo.nm() % 1000 == 0);
        CHECK(dimension->limits->hi.nm() % 1000 == 0);
    }
    // 8.2804 mm up to the next half.
    CHECK(spec.pilot_length.limits == Range{length::micrometres(8250), length::micrometres(8750)});
}

TEST_CASE("no limit is wider than what the piece allows") {
    std::mt19937_64 random(21);
    for (int round = 0; round < cases::some(500); ++round) {
        const auto piece = random_piece::make(random);
        for (const auto unit : {Unit::inch, Unit::millimetre}) {
            const auto spec = random_piece::specify(piece, unit);
            CHECK(spec.pilot_dia.limits->lo >= piece.pilot.lo);
            CHECK(spec.pilot_dia.limits->hi <= piece.pilot.hi);
            CHECK(spec.pilot_dia.limits->lo <= spec.pilot_dia.limits->hi);
            if (!piece.shank)
                continue;
            CHECK(spec.shank_dia.limits->lo >= piece.shank->lo);
            CHECK(spec.shank_dia.limits->hi <= piece.shank->hi);
        }
    }
}

TEST_CASE("a shank at either limit slips in the bore of every body") {
    Bench bench;
    std::mt19937_64 random(22);
    int judged = 0;
    for (int round = 0; round < cases::some(500); ++round) {
        const auto piece = random_piece::make(random);
        const auto spec = random_piece::specify(piece, Unit::inch);
        if (piece.kind != make::PieceKind::pilot || !spec.shank_dia.limits)
            continue;
        for (const auto& body : piece.bodies) {
            if (body.retention && *body.retention != trade::Retention::set_screw)
                continue; // held otherwise, it is tried
            for (const Length made : {spec.shank_dia.limits->lo, spec.shank_dia.limits->hi}) {
                trade::Pilot pilot;
                pilot.shank_dia = read(made);
                if (spec.shank_length.limits)
                    pilot.shank_length = known(*spec.shank_length.limits);
                const auto body_facts = trade::facts_of(body);
                const auto pilot_facts = trade::facts_of(pilot, nullptr);
                const auto finding =
                    match::judge_slip(bench.job, {&body_facts, &pilot_facts, nullptr, {}});
                CHECK(finding.verdict == Verdict::pass);
                CHECK_FALSE(finding.work);
                ++judged;
            }
        }
    }
    CHECK(judged > cases::some(500));
}

TEST_CASE("a pilot at either limit runs in every hole it serves") {
    Bench bench;
    std::mt19937_64 random(23);
    int judged = 0;
    for (int round = 0; round < cases::some(500); ++round) {
        const auto piece = random_piece::make(random);
        if (piece.kind == make::PieceKind::sleeve)
            continue; // its holes were drawn for another diameter
        const auto spec = random_piece::specify(piece, Unit::millimetre);
        for (const auto& served : piece.serves)
            for (const Length made : {spec.pilot_dia.limits->lo, spec.pilot_dia.limits->hi}) {
                trade::Pilot pilot;
                pilot.pilot_dia = read(made);
                match::CandidateHole hole;
                hole.hole = hole.size = served.hole;
                hole.running = {bench::practice().running_least, bench::practice().running_most};
                const auto& body = piece.bodies.front();
                const auto facts = trade::facts_of(body);
                const auto pilot_facts = trade::facts_of(pilot, nullptr);
                CHECK(match::judge_running(bench.job, {&facts, &pilot_facts, &hole, {}}).verdict ==
                      Verdict::pass);
                ++judged;
            }
    }
    CHECK(judged > cases::some(500));
}

TEST_CASE("a flat at either end of its limits takes the set screw of every body") {
    Bench bench;
    std::mt19937_64 random(24);
    int judged = 0, marked_out = 0;
    for (int round = 0; round < cases::some(3000); ++round) {
        const auto piece = random_piece::make(random);
        const auto unit = round % 2 == 0 ? Unit::inch : Unit::millimetre;
        const auto spec = random_piece::specify(piece, unit);
        if (!spec.flat_at)
            continue;
        if (!spec.flat_at->limits) {
            CHECK(spec.flat_at->to_suit.find("blue the shank") != std::string::npos);
            ++marked_out;
            continue;
        }
        for (const auto& body : piece.bodies) {
            if (body.retention && *body.retention != trade::Retention::set_screw)
                continue;
            for (const auto& pilot : pilots_allowed(spec)) {
                const auto body_facts = trade::facts_of(body);
                const auto pilot_facts = trade::facts_of(pilot, nullptr);
                const auto finding =
                    match::judge_flat(bench.job, {&body_facts, &pilot_facts, nullptr, {}});
                CHECK(finding.verdict == Verdict::pass);
                CHECK_FALSE(finding.work);
                ++judged;
            }
        }
    }
    CHECK(judged > cases::some(2000));
    CHECK(marked_out > 100);
}

TEST_CASE("a flat stays on the round of the shank") {
    std::mt19937_64 random(25);
    for (int round = 0; round < cases::some(2000); ++round) {
        const auto piece = random_piece::make(random);
        const auto spec = random_piece::specify(piece, Unit::inch);
        if (!spec.flat_at || !spec.flat_at->limits)
            continue;
        CHECK(spec.flat_at->limits->lo >= Length());
        const auto end = spec.flat_at->limits->hi + spec.flat_length->limits->hi;
        const auto undercut = spec.undercut ? spec.undercut->width.limits->hi : Length();
        CHECK(end + undercut <= spec.shank_length.limits->lo);
        CHECK(spec.flat_length->limits->lo < spec.flat_length->limits->hi);
        const auto shank = make::shank_as_known(piece);
        CHECK(spec.flat_depth->limits->hi * 4 < shank->lo);
    }
}

TEST_CASE("a nose has half its diameter of length at least, and the shank never touches bottom") {
    std::mt19937_64 random(26);
    for (int round = 0; round < cases::some(1000); ++round) {
        const auto piece = random_piece::make(random);
        if (piece.kind != make::PieceKind::pilot)
            continue;
        for (const auto unit : {Unit::inch, Unit::millimetre}) {
            const auto spec = random_piece::specify(piece, unit);
            CHECK(spec.pilot_length.limits->lo * 2 >= piece.pilot.hi);
            CHECK(spec.pilot_length.limits->hi >= piece.pilot.hi);
            if (spec.shank_length.limits)
                for (const auto& body : piece.bodies)
                    CHECK(spec.shank_length.limits->hi + length::sixty_fourths(2) <=
                          body.bore_depth->range.lo);
        }
    }
}

TEST_CASE("a shank goes by the size that it is called, whichever side of it it measures") {
    for (const auto measured : {tenths(1243), tenths(1256)}) // 1/8
        CHECK(make::shank_chamfer(measured, Unit::inch).limits == tenths(100, 200));
    CHECK(make::shank_chamfer(tenths(932), Unit::inch).limits == tenths(50, 100));
}

TEST_CASE("what the bodies do not tell is to suit, and how to take it is said") {
    auto piece = plain_piece();
    piece.shank.reset();
    piece.bodies[0].number = 12;
    piece.bodies[0].bore_depth.reset();
    auto spec = random_piece::specify(piece, Unit::inch);
    CHECK(spec.shank_dia.to_suit ==
          "to slip in body 12 (bore .1875 to .1877 in), try before parting off");
    CHECK(spec.shank_length.to_suit == "put a pin in the bore of body 12, measure the depth from "
                                       "the mouth and take off 1/32 in");
    CHECK(spec.flat_at->to_suit == "blue the shank, push it home in body 12, nip the set screw, "
                                   "withdraw, file at the mark");
    CHECK(spec.flat_depth->limits == tenths(200, 250));

    piece.bodies.push_back(piece.bodies[0]);
    piece.bodies[1].number = 31;
    piece.bodies[1].bore_depth = known(tenths(6200, 6300));
    spec = random_piece::specify(piece, Unit::inch);
    CHECK(spec.shank_dia.to_suit ==
          "to slip in bodies 12 and 31 (bores .1875 to .1877 in), try in each before parting off");
    CHECK_FALSE(spec.shank_length.limits);
    CHECK(spec.flat_length->to_suit == "over all the marks, 1/32 in beyond the outer ones");
}

TEST_CASE("a body that holds its pilot otherwise gets no flat, and a word on it") {
    auto piece = plain_piece();
    piece.bodies[0].retention = trade::Retention::threaded;
    const auto spec = random_piece::specify(piece, Unit::inch);
    CHECK_FALSE(spec.flat_at);
    CHECK(says(spec.cautions, "by a thread"));
}

TEST_CASE("a nose under 60 % of its shank is called weak") {
    auto piece = plain_piece();
    piece.pilot = tenths(1110, 1117); // .1863 x .6 = .11178
    CHECK(make::weak_neck(piece));
    CHECK(says(random_piece::specify(piece, Unit::inch).cautions, "weak in bending"));
    piece.pilot = tenths(1110, 1118);
    CHECK_FALSE(make::weak_neck(piece));
    // .1863 - .1118 is .0745: .037 a side.
    const auto spec = random_piece::specify(piece, Unit::inch);
    CHECK(spec.form == make::Form::neck);
    CHECK_FALSE(spec.undercut);
    CHECK(spec.corner_radius);
}

TEST_CASE("a thin cutting edge is named") {
    auto piece = plain_piece();
    piece.bodies[0].cut_dia = known(tenths(3850, 3852)); // (.3850 - .3260) / 2 = .0295
    auto cautions = random_piece::specify(piece, Unit::inch).cautions;
    CHECK(says(cautions, "only .0295 in of cutting edge"));
    piece.bodies[0].cut_dia = known(tenths(3860, 3862)); // .0300
    cautions = random_piece::specify(piece, Unit::inch).cautions;
    CHECK_FALSE(says(cautions, "cutting edge"));
}

TEST_CASE("a sleeve slides on its pilot and keeps its wall at every limit") {
    std::mt19937_64 random(27);
    int judged = 0;
    for (int round = 0; round < cases::some(1000); ++round) {
        const auto piece = random_piece::make(random);
        if (piece.kind != make::PieceKind::sleeve)
            continue;
        const auto spec = random_piece::specify(piece, Unit::inch);
        CHECK(spec.sleeve_bore);
        if (!spec.sleeve_bore->limits) {
            CHECK(spec.sleeve_bore->to_suit.find("measure pilot 77") == 0);
            continue;
        }
        const auto& bore = *spec.sleeve_bore->limits;
        const auto& pilot = piece.owned->pilot_dia->range;
        CHECK(bore.lo - pilot.hi >= make::k_sleeve_slide_least);
        CHECK(bore.hi - pilot.lo <= make::k_sleeve_slide_most);
        CHECK(spec.pilot_dia.limits->lo - bore.hi >= make::k_sleeve_wall * 2);
        ++judged;
    }
    CHECK(judged > cases::some(50));
}

TEST_CASE("every piece carries its material, the order of work and the cautions for the lathe") {
    std::mt19937_64 random(28);
    for (int round = 0; round < cases::some(300); ++round) {
        const auto piece = random_piece::make(random);
        const auto spec = random_piece::specify(piece, Unit::inch);
        CHECK_FALSE(spec.material.empty());
        CHECK_FALSE(spec.treatment.empty());
        CHECK(spec.steps.size() >= 4);
        CHECK(says(spec.cautions, "eye protection"));
        for (const auto* dimension : make::dimensions_of(spec)) {
            CHECK((dimension->limits.has_value() || !dimension->to_suit.empty()));
            CHECK_FALSE(dimension->source.empty());
        }
    }
}
