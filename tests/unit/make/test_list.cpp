// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The make-list over random racks: what it claims holds once the pieces are made, at both ends of
// their limits, and no piece is one too many.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <set>

#include "make/list.hpp"
#include "match/finding.hpp"
#include "store/reference.hpp"

using length::inches_e5;
using length::Length;
using length::Range;
using match::AnswerKind;

namespace {

class ListRack : public trade::Rack {
  public:
    std::vector<trade::Body> body_list;
    std::vector<trade::Pilot> pilot_list;
    std::vector<trade::Trial> trial_list;

    [[nodiscard]] std::vector<trade::Body> bodies() const override { return body_list; }
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override { return pilot_list; }
    [[nodiscard]] std::vector<trade::Trial> trials() const override { return trial_list; }
};

struct Shop {
    store::Reference tables;
    match::Shop shop =
        match::make_shop(tables, trade::read_practice(tables.practice()), length::Unit::inch);
};

const Shop& the_shop() {
    static const Shop shop;
    return shop;
}

make::Wish wish_for(const std::string& screw) {
    const auto& shop = the_shop();
    make::Wish wish{screw, {}};
    wish.question.screw = trade::resolve_screw(screw, "", shop.tables, {});
    wish.question.below = shop.shop.practice.below_flush;
    return wish;
}

const std::vector<std::string>& sizes() {
    static const std::vector<std::string> names{
        "#6-32 shcs",  "#8-32 shcs",       "#10-24 shcs",  "#10-32 shcs 1936",
        "1/4-20 shcs", "1/4-20 fillister", "5/16-18 shcs", "5/16-18 shcs 1936",
        "3/8-16 shcs", "3/8-16 low head",  "7/16-14 shcs", "7/16-14 shcs 1936",
        "1/2-13 shcs", "1/2-13 fillister", "1/4 shoulder", "M6 shcs",
        "M8 shcs",     "5/16 button head", "M10 shcs",     "1/4-20 hex cap"};
    return names;
}

trade::Dimension read_as(Length value, Length within) {
    return {"", trade::How::micrometer, {value - within, value + within}};
}

// Bodies that lack their pilots: cutters of shop sizes, bores of a few sizes as they measure.
ListRack random_rack(std::mt19937_64& random) {
    const auto pick = [&random](int n) {
        return static_cast<int>(random() % static_cast<unsigned>(n));
    };
    const std::vector<std::int64_t> bores{9375, 12500, 18750, 25000};
    ListRack rack;
    const int count = 1 + pick(12);
    for (int i = 1; i <= count; ++i) {
        trade::Body body;
        body.number = i;
        body.kind = trade::BodyKind::counterbore;
        body.pilot_kind = trade::PilotKind::removable;
        body.cut_dia = read_as(length::sixty_fourths(16 + pick(40)), inches_e5(20));
        const Length bore = inches_e5(bores[static_cast<std::size_t>(pick(4))] + 10 * pick(30));
        // One in six is only calipered, too coarse for limits.
        body.bore = read_as(bore, pick(6) == 0 ? inches_e5(150) : inches_e5(20));
        body.retention = trade::Retention::set_screw;
        rack.body_list.push_back(body);
    }
    return rack;
}

std::vector<make::Wish> random_wishes(std::mt19937_64& random) {
    std::vector<make::Wish> wishes;
    for (const auto& size : sizes())
        if (random() % 2 == 0)
            wishes.push_back(wish_for(size));
    return wishes;
}

make::MakeList list_of(const std::vector<make::Wish>& wishes, const ListRack& rack) {
    return make::make_list(wishes, the_shop().shop, rack, length::Unit::inch, {});
}

// The rack once a piece was made to these sizes, measured, and slid and held where it belongs.
void add_made(ListRack& rack, const make::Piece& piece, Length pilot_dia, Length shank_dia) {
    const auto within = the_shop().shop.practice.micrometer_within;
    trade::Pilot pilot;
    pilot.number = 1000 + piece.item;
    pilot.pilot_dia = read_as(pilot_dia, within);
    pilot.shank_dia = read_as(shank_dia, within);
    rack.pilot_list.push_back(pilot);
    for (const auto& body : piece.bodies)
        rack.trial_list.push_back({pilot.number, body.number, trade::Tried::slides_and_holds});
}

const make::Wish& wish_named(const std::vector<make::Wish>& wishes, const std::string& screw) {
    return *std::find_if(wishes.begin(), wishes.end(),
                         [&screw](const make::Wish& wish) { return wish.screw == screw; });
}

// Ready in this very body.
bool ready_in(const make::Wish& wish, const ListRack& rack, std::int64_t body) {
    ListRack one = rack;
    std::erase_if(one.body_list, [body](const trade::Body& b) { return b.number != body; });
    const auto report = match::match(wish.question, the_shop().shop, one, length::Unit::inch, 1);
    return !report.answers.empty() && report.answers[0].kind == AnswerKind::ready;
}

std::set<std::string> met_with(const std::vector<make::Wish>& wishes, const ListRack& rack) {
    std::set<std::string> met;
    for (const auto& wish : wishes) {
        const auto report =
            match::match(wish.question, the_shop().shop, rack, length::Unit::inch, 1);
        if (report.counts[0] + report.counts[1] > 0)
            met.insert(wish.screw);
    }
    return met;
}

Length shank_of(const make::Piece& piece, bool high) {
    if (piece.shank)
        return high ? piece.shank->hi : piece.shank->lo;
    return piece.bodies.front().bore->range.lo - inches_e5(60); // fitted by trying
}

} // namespace

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
    for (int round = 0; round < 300; ++round) {
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
    CHECK(alone > 300);
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
    for (int round = 0; round < 100; ++round) {
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

TEST_CASE("whatever a piece claims to serve is ready at both ends of its limits") {
    std::mt19937_64 random(11);
    int claims = 0;
    for (int round = 0; round < 150; ++round) {
        const auto wishes = random_wishes(random);
        const auto rack = random_rack(random);
        for (const auto& piece : list_of(wishes, rack).pieces)
            for (const bool high : {false, true}) {
                ListRack made = rack;
                add_made(made, piece, high ? piece.pilot.hi : piece.pilot.lo,
                         shank_of(piece, high));
                for (const auto& served : piece.serves) {
                    CAPTURE(round);
                    CAPTURE(served.screw);
                    CHECK(ready_in(wish_named(wishes, served.screw), made, served.body));
                    ++claims;
                }
            }
    }
    CHECK(claims > 1000);
}

TEST_CASE("limits hold by measurement alone, without a trial, where the piece gives them") {
    std::mt19937_64 random(12);
    int checked = 0;
    for (int round = 0; round < 100; ++round) {
        const auto wishes = random_wishes(random);
        const auto rack = random_rack(random);
        for (const auto& piece : list_of(wishes, rack).pieces) {
            if (!piece.shank)
                continue;
            const auto& practice = the_shop().shop.practice;
            for (const auto& body : piece.bodies) {
                CHECK(body.bore->range.lo - (piece.shank->hi + practice.micrometer_within) >=
                      practice.slip_least);
                CHECK(body.bore->range.hi - (piece.shank->lo - practice.micrometer_within) <=
                      practice.slip_most);
                ++checked;
            }
        }
    }
    CHECK(checked > 100);
}

TEST_CASE("every piece is needed, and together they meet what is not said to be unmet") {
    std::mt19937_64 random(13);
    int pieces = 0;
    for (int round = 0; round < 100; ++round) {
        const auto wishes = random_wishes(random);
        const auto rack = random_rack(random);
        const auto list = list_of(wishes, rack);
        CAPTURE(round);
        CHECK(list.proven);
        // What is to be settled first may be met by chance; it is not what the list is for.
        std::set<std::string> for_list;
        for (const auto& wish : wishes)
            for_list.insert(wish.screw);
        for (const auto& settle : list.settle_first)
            for_list.erase(settle.screw);
        const auto met_without = [&](int left_out) {
            ListRack made = rack;
            for (const auto& piece : list.pieces)
                if (piece.item != left_out)
                    add_made(made, piece, piece.pilot.lo, shank_of(piece, false));
            auto met = met_with(wishes, made);
            std::erase_if(met, [&](const std::string& screw) { return !for_list.count(screw); });
            return met;
        };
        const auto all = met_without(0);
        CHECK(all.size() == for_list.size() - list.cannot.size());
        for (const auto& cannot : list.cannot)
            CHECK_FALSE(all.count(cannot.screw));
        for (const auto& piece : list.pieces) {
            CHECK(met_without(piece.item).size() < all.size());
            ++pieces;
        }
    }
    CHECK(pieces > 100);
}

TEST_CASE("a body whose bore is larger than the hole is never offered for it") {
    std::mt19937_64 random(14);
    for (int round = 0; round < 150; ++round) {
        const auto rack = random_rack(random);
        for (const auto& piece : list_of(random_wishes(random), rack).pieces)
            for (const auto& served : piece.serves) {
                const auto& body = rack.body_list[static_cast<std::size_t>(served.body - 1)];
                CHECK(body.bore->range.hi <= served.hole.lo);
            }
    }
}

TEST_CASE("the list does not depend on the order of the house list") {
    std::mt19937_64 random(15);
    for (int round = 0; round < 30; ++round) {
        auto wishes = random_wishes(random);
        const auto rack = random_rack(random);
        const auto before = list_of(wishes, rack);
        std::reverse(wishes.begin(), wishes.end());
        const auto after = list_of(wishes, rack);
        CHECK(before.pieces.size() == after.pieces.size());
        CHECK(before.cannot.size() == after.cannot.size());
    }
}

namespace {

// As random_rack, with owned pilots that slide and hold in some of the bodies, soft or hard.
ListRack rack_with_pilots(std::mt19937_64& random) {
    auto rack = random_rack(random);
    const auto within = the_shop().shop.practice.micrometer_within;
    for (const auto& body : rack.body_list) {
        if (random() % 2 == 0)
            continue;
        trade::Pilot pilot;
        pilot.number = 100 + body.number;
        pilot.pilot_dia =
            read_as(inches_e5(10'000 + static_cast<std::int64_t>(random() % 40'000)), within);
        pilot.shank_dia = read_as(body.bore->range.lo - inches_e5(80), within);
        pilot.material = random() % 2 == 0 ? "soft drill rod" : "hardened drill rod";
        rack.pilot_list.push_back(pilot);
        rack.trial_list.push_back({pilot.number, body.number, trade::Tried::slides_and_holds});
    }
    return rack;
}

// A sleeve gives its pilot a second size; turning down changes the pilot itself.
void make_of_owned(ListRack& rack, const make::Piece& piece, Length pilot_dia) {
    if (piece.kind == make::PieceKind::sleeve) {
        const auto& shank = piece.owned->shank_dia->range;
        add_made(rack, piece, pilot_dia, (shank.lo + shank.hi) / 2);
        return;
    }
    for (auto& pilot : rack.pilot_list)
        if (pilot.number == piece.owned->number)
            pilot.pilot_dia = read_as(pilot_dia, the_shop().shop.practice.micrometer_within);
}

} // namespace

TEST_CASE("a sleeve or a turned-down pilot serves what it claims, and spoils nothing else") {
    std::mt19937_64 random(16);
    int sleeves = 0;
    int turned = 0;
    for (int round = 0; round < 200; ++round) {
        CAPTURE(round);
        const auto wishes = random_wishes(random);
        const auto rack = rack_with_pilots(random);
        const auto list =
            make::make_list(wishes, the_shop().shop, rack, length::Unit::inch, {true, true});
        const auto met_before = met_with(wishes, rack);
        std::set<std::int64_t> used;
        ListRack all = rack;
        for (const auto& piece : list.pieces) {
            if (piece.kind == make::PieceKind::pilot)
                continue;
            const auto& owned = piece.owned->pilot_dia->range;
            for (const bool high : {false, true}) {
                ListRack made = rack;
                make_of_owned(made, piece, high ? piece.pilot.hi : piece.pilot.lo);
                for (const auto& served : piece.serves)
                    CHECK(ready_in(wish_named(wishes, served.screw), made, served.body));
            }
            make_of_owned(all, piece, piece.pilot.lo);
            if (piece.kind == make::PieceKind::sleeve) {
                CHECK(piece.pilot.lo - owned.hi >= length::sixty_fourths(4)); // two walls of 1/32
                ++sleeves;
            } else {
                CHECK(piece.pilot.hi < owned.lo);
                CHECK(piece.owned->material == "soft drill rod");
                CHECK(used.insert(piece.owned->number).second);
                ++turned;
            }
        }
        const auto met_after = met_with(wishes, all);
        CHECK(std::includes(met_after.begin(), met_after.end(), met_before.begin(),
                            met_before.end()));
    }
    CHECK(sleeves > 10);
    CHECK(turned > 10);
}

TEST_CASE("sleeves and turning down never make the list longer") {
    std::mt19937_64 random(17);
    for (int round = 0; round < 60; ++round) {
        const auto wishes = random_wishes(random);
        const auto rack = rack_with_pilots(random);
        const auto without = list_of(wishes, rack);
        const auto with =
            make::make_list(wishes, the_shop().shop, rack, length::Unit::inch, {true, true});
        CHECK(with.cannot.size() <= without.cannot.size());
        if (with.cannot.size() == without.cannot.size())
            CHECK(with.pieces.size() <= without.pieces.size());
    }
}
