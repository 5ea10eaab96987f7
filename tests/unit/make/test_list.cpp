// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The make-list over random racks: what it claims holds once the pieces are made, at both ends of
// their limits, and no piece is one too many.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <set>

#include "cases.hpp"
#include "list_bench.hpp"

using namespace list_bench;

TEST_CASE("whatever a piece claims to serve is ready at both ends of its limits") {
    std::mt19937_64 random(11);
    int claims = 0;
    for (int round = 0; round < cases::some(150); ++round) {
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
    CHECK(claims > cases::some(1000));
}

TEST_CASE("limits hold by measurement alone, without a trial, where the piece gives them") {
    std::mt19937_64 random(12);
    int checked = 0;
    for (int round = 0; round < cases::some(100); ++round) {
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
    CHECK(checked > cases::some(100));
}

TEST_CASE("every piece is needed, and together they meet what is not said to be unmet") {
    std::mt19937_64 random(13);
    int pieces = 0;
    for (int round = 0; round < cases::some(100); ++round) {
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
    CHECK(pieces > cases::some(100));
}

TEST_CASE("a body whose bore is larger than the hole is never offered for it") {
    std::mt19937_64 random(14);
    for (int round = 0; round < cases::some(150); ++round) {
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
    for (int round = 0; round < cases::some(30); ++round) {
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
    for (int round = 0; round < cases::some(200); ++round) {
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
    CHECK(turned > cases::some(10));
}

TEST_CASE("sleeves and turning down never make the list longer") {
    std::mt19937_64 random(17);
    for (int round = 0; round < cases::some(60); ++round) {
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
