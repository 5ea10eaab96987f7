// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include "bench.hpp"
#include "make/stock.hpp"

using length::Length;
using length::millimetres;
using length::sixty_fourths;
using length::Unit;

namespace {

make::Piece piece(int item) {
    make::Piece p;
    p.item = item;
    return p;
}

make::Spec cut_from(Length bar, Length length) {
    make::Spec spec;
    spec.stock_dia = bar;
    spec.cut_length = length;
    return spec;
}

} // namespace

TEST_CASE("a bar leaves 1/64 to clean up") {
    const auto bars = make::usual_bars(Unit::inch);
    CHECK(make::bar_for(sixty_fourths(23), bars, Unit::inch).diameter == sixty_fourths(24));
    const auto next = make::bar_for(sixty_fourths(23) + Length::from_nm(1), bars, Unit::inch);
    CHECK(next.diameter == sixty_fourths(28));
    CHECK(next.own);
}

TEST_CASE("a bar that the shop lacks is the next whole size, and said so") {
    const auto inch = make::bar_for(bench::tenths(10510), make::usual_bars(Unit::inch), Unit::inch);
    CHECK(inch.diameter == sixty_fourths(72)); // 1.0666: 1-1/8
    CHECK_FALSE(inch.own);
    const auto metric =
        make::bar_for(millimetres(25), make::usual_bars(Unit::millimetre), Unit::millimetre);
    CHECK(metric.diameter == millimetres(26));
    CHECK(make::bar_for(millimetres(5), {}, Unit::millimetre).diameter == millimetres(6));
}

TEST_CASE("the usual bars are drill rod by sixteenths or millimetres") {
    const auto inch = make::usual_bars(Unit::inch);
    CHECK(inch.size() == 15);
    CHECK(inch.front() == sixty_fourths(8));
    CHECK(inch.back() == sixty_fourths(64));
    const auto metric = make::usual_bars(Unit::millimetre);
    CHECK(metric.size() == 23);
    CHECK(metric.front() == millimetres(3));
    CHECK(metric.back() == millimetres(25));
}

TEST_CASE("a plan has the longest cuts first, a kerf after each, and a grip") {
    const auto plans = make::plan_stock(
        {piece(1), piece(2), piece(3), piece(4), piece(5)},
        {cut_from(millimetres(10), millimetres(20)), cut_from(millimetres(6), millimetres(30)),
         cut_from(millimetres(10), millimetres(25)), cut_from(millimetres(10), millimetres(20)),
         cut_from(Length(), Length())},
        millimetres(2), millimetres(15));
    REQUIRE(plans.size() == 2); // the last piece needs no bar
    CHECK(plans[0].diameter == millimetres(6));
    CHECK(plans[0].total == millimetres(30 + 2 + 15));
    REQUIRE(plans[1].cuts.size() == 3);
    CHECK(plans[1].cuts[0].item == 3);
    CHECK(plans[1].cuts[1].item == 1);
    CHECK(plans[1].cuts[2].item == 4);
    CHECK(plans[1].total == millimetres(25 + 20 + 20 + 3 * 2 + 15));
}
