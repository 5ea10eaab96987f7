// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Random racks and house lists for the tests of the make-list, and what comes of its pieces once
// they are made.
#pragma once

#include <algorithm>
#include <random>
#include <set>

#include "bench.hpp"
#include "make/list.hpp"
#include "store/reference.hpp"

namespace list_bench {

using bench::ListRack;
using length::inches_e5;
using length::Length;
using length::Range;
using match::AnswerKind;

struct Shop {
    store::Reference tables;
    match::Shop shop =
        match::make_shop(tables, trade::read_practice(tables.practice()), length::Unit::inch);
};

inline const Shop& the_shop() {
    static const Shop shop;
    return shop;
}

inline make::Wish wish_for(const std::string& screw) {
    const auto& shop = the_shop();
    make::Wish wish{screw, {}};
    wish.question.screw = trade::resolve_screw(screw, "", shop.tables, {});
    wish.question.below = shop.shop.practice.below_flush;
    return wish;
}

inline const std::vector<std::string>& sizes() {
    static const std::vector<std::string> names{
        "#6-32 shcs",  "#8-32 shcs",       "#10-24 shcs",  "#10-32 shcs 1936",
        "1/4-20 shcs", "1/4-20 fillister", "5/16-18 shcs", "5/16-18 shcs 1936",
        "3/8-16 shcs", "3/8-16 low head",  "7/16-14 shcs", "7/16-14 shcs 1936",
        "1/2-13 shcs", "1/2-13 fillister", "1/4 shoulder", "M6 shcs",
        "M8 shcs",     "5/16 button head", "M10 shcs",     "1/4-20 hex cap"};
    return names;
}

inline trade::Dimension read_as(Length value, Length within) {
    return {"", trade::How::micrometer, {value - within, value + within}};
}

// Bodies that lack their pilots: cutters of shop sizes, bores of a few sizes as they measure.
inline ListRack random_rack(std::mt19937_64& random) {
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

inline std::vector<make::Wish> random_wishes(std::mt19937_64& random) {
    std::vector<make::Wish> wishes;
    for (const auto& size : sizes())
        if (random() % 2 == 0)
            wishes.push_back(wish_for(size));
    return wishes;
}

inline make::MakeList list_of(const std::vector<make::Wish>& wishes, const ListRack& rack) {
    return make::make_list(wishes, the_shop().shop, rack, length::Unit::inch, {});
}

// The rack once a piece was made to these sizes, measured, and slid and held where it belongs.
inline void add_made(ListRack& rack, const make::Piece& piece, Length pilot_dia, Length shank_dia) {
    const auto within = the_shop().shop.practice.micrometer_within;
    trade::Pilot pilot;
    pilot.number = 1000 + piece.item;
    pilot.pilot_dia = read_as(pilot_dia, within);
    pilot.shank_dia = read_as(shank_dia, within);
    rack.pilot_list.push_back(pilot);
    for (const auto& body : piece.bodies)
        rack.trial_list.push_back({pilot.number, body.number, trade::Tried::slides_and_holds});
}

inline const make::Wish& wish_named(const std::vector<make::Wish>& wishes,
                                    const std::string& screw) {
    return *std::find_if(wishes.begin(), wishes.end(),
                         [&screw](const make::Wish& wish) { return wish.screw == screw; });
}

// Ready in this very body.
inline bool ready_in(const make::Wish& wish, const ListRack& rack, std::int64_t body) {
    ListRack one = rack;
    std::erase_if(one.body_list, [body](const trade::Body& b) { return b.number != body; });
    const auto report = match::match(wish.question, the_shop().shop, one, length::Unit::inch, 1);
    return !report.answers.empty() && report.answers[0].kind == AnswerKind::ready;
}

inline std::set<std::string> met_with(const std::vector<make::Wish>& wishes, const ListRack& rack) {
    std::set<std::string> met;
    for (const auto& wish : wishes) {
        const auto report =
            match::match(wish.question, the_shop().shop, rack, length::Unit::inch, 1);
        if (report.counts[0] + report.counts[1] > 0)
            met.insert(wish.screw);
    }
    return met;
}

inline Length shank_of(const make::Piece& piece, bool high) {
    if (piece.shank)
        return high ? piece.shank->hi : piece.shank->lo;
    return piece.bodies.front().bore->range.lo - inches_e5(60); // fitted by trying
}

} // namespace list_bench
