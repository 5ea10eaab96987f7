// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The defaults of shop practice as the rules read them.
#include <doctest/doctest.h>

#include <algorithm>

#include "tables.hpp"
#include "trade/material.hpp"

using length::Length;
using length::sixty_fourths;
using tables::in;
using tables::mm;

TEST_CASE("every default of shop practice is read by its rule") {
    const auto rows = tables::reference().practice();
    CHECK(std::count_if(rows.begin(), rows.end(),
                        [](const auto& row) { return !trade::everyday_word(row.name); }) == 59);
    const auto practice = trade::read_practice(rows);
    CHECK(practice.head_clearance == in(".005"));
    CHECK(practice.tool_over_head_number == sixty_fourths(1));
    CHECK(practice.tool_over_head_fraction == sixty_fourths(2));
    CHECK(practice.published_over_head == sixty_fourths(4));
    CHECK(practice.published_over_head_inch == sixty_fourths(8));
    CHECK(practice.tool_size_under == in(".003"));
    CHECK(practice.recommended_over == in(".010"));
    CHECK(practice.large_over_published == sixty_fourths(8));
    CHECK(practice.large_share_of_head == 250);
    CHECK(practice.seat_share == 850);
    CHECK(practice.running_least == length::micrometres(20));
    CHECK(practice.running_most == in(".010"));
    CHECK(practice.good_to_eighth.least == in(".001"));
    CHECK(practice.good_to_eighth.most == in(".003"));
    CHECK(practice.good_to_quarter.least == in(".002"));
    CHECK(practice.good_to_quarter.most == in(".004"));
    CHECK(practice.good_to_half.least == in(".002"));
    CHECK(practice.good_to_half.most == in(".005"));
    CHECK(practice.good_over_half.least == in(".003"));
    CHECK(practice.good_over_half.most == in(".006"));
    CHECK(practice.loose_share == 125);
    CHECK(practice.loose_over == sixty_fourths(3));
    CHECK(practice.drill_indexes.empty());
    CHECK(practice.slip_least == in(".0002"));
    CHECK(practice.slip_most == in(".0025"));
    CHECK(practice.good_slip_least == in(".0003"));
    CHECK(practice.good_slip_most == in(".0010"));
    CHECK(practice.set_screw_point_share == 500);
    CHECK(practice.below_flush == sixty_fourths(1));
    CHECK(practice.spotface_depth == sixty_fourths(4));
    CHECK(practice.guidance_share == 500);
    CHECK(practice.closest_share == 250);
}

TEST_CASE("the defaults say how far each way of knowing a size is right") {
    const auto practice = trade::read_practice(tables::reference().practice());
    CHECK(practice.mark_cutter_under == in(".003"));
    CHECK(practice.mark_cutter_over == in(".001"));
    CHECK(practice.mark_metric_cutter_wear == mm(".08"));
    CHECK(practice.mark_pilot_under == in(".003"));
    CHECK(practice.mark_pilot_over == Length());
    CHECK(practice.mark_shank_under == in(".003"));
    CHECK(practice.mark_shank_over == Length());
    CHECK(practice.mark_bore_under == Length());
    CHECK(practice.mark_bore_over == in(".003"));
    CHECK(practice.rule_within == sixty_fourths(1));
    CHECK(practice.caliper_within == in(".001"));
    CHECK(practice.micrometer_within == in(".0002"));
    CHECK(practice.pin_gauge_within == in(".0002"));
    CHECK(practice.test_hole_within == in(".002"));
    CHECK(practice.guess_within == sixty_fourths(4));
    CHECK(practice.unstated_decimal_within == in(".002"));
    CHECK(practice.unstated_fraction_within == sixty_fourths(1));
}

TEST_CASE("every default could be set as it is written, and says what it is and where from") {
    for (const auto& row : tables::reference().practice()) {
        CAPTURE(row.name);
        CHECK_NOTHROW(trade::check_practice_value(row.name, row.value));
        CHECK(!row.about.empty());
        CHECK(!row.source.empty());
        CHECK(!row.own);
    }
}
