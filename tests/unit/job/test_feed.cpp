// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include "error/error.hpp"
#include "job/feed.hpp"

using length::Length;
using length::sixty_fourths;

namespace {

Length thousandths(std::int64_t count) {
    return Length::from_nm(count * 25'400);
}

// Two bands a class, each with its own figures.
const std::vector<trade::Feed>& feeds() {
    static const std::vector<trade::Feed> rows{
        {"free", {}, sixty_fourths(16), thousandths(3), thousandths(4), {}},
        {"free", sixty_fourths(16), {}, thousandths(5), thousandths(6), {}},
        {"tough", {}, sixty_fourths(16), thousandths(1), thousandths(2), {}},
        {"tough", sixty_fourths(16), sixty_fourths(64), thousandths(2), thousandths(3), {}},
    };
    return rows;
}

} // namespace

TEST_CASE("a feed at the middle of a band is that of its row") {
    CHECK(job::feed_for("free", sixty_fourths(8), feeds()).least == thousandths(3));
    CHECK(job::feed_for("free", sixty_fourths(24), feeds()).least == thousandths(5));
    CHECK(job::feed_for("tough", sixty_fourths(40), feeds()).most == thousandths(3));
}

TEST_CASE("a row without an upper bound is as if it ended at twice the lower one") {
    CHECK(job::cutter_of(feeds()[1]) == sixty_fourths(24));
    CHECK(job::cutter_of(feeds()[0]) == sixty_fourths(8));
    CHECK(job::cutter_of(feeds()[3]) == sixty_fourths(40));
}

TEST_CASE("between two middles a feed grows in proportion to the cutter, beyond them it stays") {
    const auto at_bound = job::feed_for("free", sixty_fourths(16), feeds());
    CHECK(at_bound.least == thousandths(4)); // half way from 3 to 5
    CHECK(at_bound.most == thousandths(5));
    CHECK(job::feed_for("free", sixty_fourths(12), feeds()).least == length::inches_e5(350));
    CHECK(job::feed_for("free", sixty_fourths(20), feeds()).least == length::inches_e5(450));
    CHECK(job::feed_for("tough", sixty_fourths(16), feeds()).most == length::inches_e5(225));
    CHECK(job::feed_for("free", sixty_fourths(1), feeds()).least == thousandths(3));
    CHECK(job::feed_for("free", sixty_fourths(200), feeds()).least == thousandths(5));
}

TEST_CASE("a cutter or a class without a row is refused") {
    CHECK_THROWS_WITH_AS(job::feed_for("tough", Length::from_nm(25'400'001), feeds()),
                         "no feed for a cutter of 25.400001 mm in this class of material: 'tough'",
                         error::BadData);
    CHECK_THROWS_AS(job::feed_for("soft", sixty_fourths(8), feeds()), error::BadData);
}
