// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Practice, drills, and the ways of measuring.
#include <algorithm>
#include <array>
#include <string>

#include <fmt/format.h>

#include "oracle/random_catalogue.hpp"

namespace oracle {

using length::inches_e5;
using length::Length;
using length::sixty_fourths;
using length::thousandths;

namespace {

// Thousandths of an inch times ten: #1 to #60 (ASME B94.11M, from memory).
constexpr std::array k_number_drills = {
    2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800,
    1770, 1730, 1695, 1660, 1610, 1590, 1570, 1540, 1520, 1495, 1470, 1440, 1405, 1360, 1285,
    1200, 1160, 1130, 1110, 1100, 1065, 1040, 1015, 995,  980,  960,  935,  890,  860,  820,
    810,  785,  760,  730,  700,  670,  635,  595,  550,  520,  465,  430,  420,  410,  400};
// Thousandths of an inch: A to Z.
constexpr std::array k_letter_drills = {234, 238, 242, 246, 250, 257, 261, 266, 272,
                                        277, 281, 290, 295, 302, 316, 323, 332, 339,
                                        348, 358, 368, 377, 386, 397, 404, 413};

std::string fraction_name(std::int64_t of_64) {
    std::int64_t below = 64;
    while (of_64 % 2 == 0 && below > 1) {
        of_64 /= 2;
        below /= 2;
    }
    const std::int64_t whole = of_64 / below;
    const std::int64_t rest = of_64 % below;
    if (rest == 0) {
        return fmt::format("{}", whole);
    }
    return whole == 0 ? fmt::format("{}/{}", rest, below)
                      : fmt::format("{}-{}/{}", whole, rest, below);
}

trade::Drill metric_drill(std::int64_t tenths) {
    const std::string name = tenths % 10 == 0 ? fmt::format("{} mm", tenths / 10)
                                              : fmt::format("{}.{} mm", tenths / 10, tenths % 10);
    return {name, trade::DrillKind::metric, length::micrometres(tenths * 100)};
}

// The same diameter under another kind's name, so that equal drills are common.
trade::Drill twin_of(const trade::Drill& drill, trade::DrillKind kind) {
    return {drill.name + " twin", kind, drill.diameter};
}

void sort_by_diameter(std::vector<trade::Drill>& drills) {
    std::sort(drills.begin(), drills.end(), [](const trade::Drill& a, const trade::Drill& b) {
        return a.diameter != b.diameter ? a.diameter < b.diameter : a.kind < b.kind;
    });
}

bool is_published(const trade::Screw& screw, const trade::Drill& drill) {
    for (const auto& hole : {screw.close, screw.normal, screw.loose}) {
        if (hole && hole->drill == drill.name) {
            return true;
        }
    }
    return false;
}

} // namespace

trade::Practice usual_practice() {
    trade::Practice usual;
    usual.head_clearance = thousandths(5);
    usual.tool_over_head_number = sixty_fourths(1);
    usual.tool_over_head_fraction = sixty_fourths(2);
    usual.published_over_head = sixty_fourths(4);
    usual.published_over_head_inch = sixty_fourths(8);
    usual.tool_size_under = thousandths(3);
    usual.recommended_over = thousandths(10);
    usual.large_over_published = sixty_fourths(8);
    usual.large_share_of_head = 250;
    usual.seat_share = 850;
    usual.running_least = inches_e5(80);
    usual.running_most = thousandths(10);
    usual.running_most_over_half = thousandths(12);
    usual.running_most_over_inch = thousandths(15);
    usual.good_to_eighth = {thousandths(1), thousandths(3)};
    usual.good_to_quarter = {thousandths(2), thousandths(4)};
    usual.good_to_half = {thousandths(2), thousandths(5)};
    usual.good_over_half = {thousandths(3), thousandths(6)};
    usual.size_on_size = thousandths(2);
    usual.reamed_over = inches_e5(50);
    usual.loose_share = 125;
    usual.loose_over = sixty_fourths(3);
    usual.slip_least = inches_e5(20);
    usual.slip_most = inches_e5(250);
    usual.good_slip_least = inches_e5(30);
    usual.good_slip_most = inches_e5(100);
    usual.set_screw_point_share = 500;
    usual.below_flush = sixty_fourths(1);
    usual.spotface_depth = sixty_fourths(4);
    usual.guidance_share = 500;
    usual.closest_share = 250;
    usual.mark_cutter_under = thousandths(3);
    usual.mark_cutter_over = thousandths(1);
    usual.mark_metric_cutter_wear = length::micrometres(80);
    usual.pilot_under_hole = {thousandths(1), thousandths(4)};
    usual.mark_metric_pilot_wear = length::micrometres(20);
    return usual;
}

std::vector<trade::Oversize> usual_oversize() {
    return {{sixty_fourths(4), inches_e5(100), inches_e5(150), inches_e5(200)},
            {sixty_fourths(8), inches_e5(100), inches_e5(300), inches_e5(450)},
            {sixty_fourths(16), inches_e5(250), inches_e5(400), inches_e5(650)},
            {sixty_fourths(32), inches_e5(300), inches_e5(500), inches_e5(800)},
            {sixty_fourths(48), inches_e5(300), inches_e5(500), inches_e5(800)},
            {sixty_fourths(64), inches_e5(400), inches_e5(700), inches_e5(900)}};
}

// ASME B94.11 is what drills are held to; these are the usual limits of the holes they leave (as
// printed in handbooks, from memory).
std::vector<trade::DrilledHole> usual_drilled_holes() {
    return {{sixty_fourths(8), thousandths(4)},   {sixty_fourths(16), thousandths(5)},
            {sixty_fourths(32), thousandths(6)},  {sixty_fourths(48), thousandths(8)},
            {sixty_fourths(64), thousandths(10)}, {sixty_fourths(128), thousandths(12)}};
}

trade::Practice random_practice(Dice& dice) {
    trade::Practice practice = usual_practice();
    if (dice.chance(80)) {
        return practice;
    }
    practice.head_clearance = thousandths(dice.between(2, 12));
    practice.tool_size_under = thousandths(dice.between(0, 6));
    practice.recommended_over = thousandths(dice.between(2, 20));
    practice.large_over_published = sixty_fourths(dice.between(4, 12));
    practice.seat_share = dice.between(750, 980);
    practice.running_least = inches_e5(dice.between(20, 200));
    practice.running_most_over_half = thousandths(dice.between(8, 16));
    practice.running_most_over_inch = thousandths(dice.between(8, 18));
    practice.size_on_size = inches_e5(dice.between(0, 500));
    practice.reamed_over = inches_e5(dice.between(20, 200));
    practice.mark_cutter_under = thousandths(dice.between(0, 8));
    practice.pilot_under_hole.most = thousandths(dice.between(1, 8));
    practice.running_most = thousandths(dice.between(6, 14));
    practice.good_to_half = {thousandths(1), thousandths(dice.between(3, 6))};
    practice.loose_share = dice.between(60, 200);
    practice.loose_over = sixty_fourths(dice.between(1, 5));
    practice.slip_most = inches_e5(dice.between(150, 400));
    practice.set_screw_point_share = dice.between(40, 90) * 10;
    practice.spotface_depth = sixty_fourths(dice.between(2, 6));
    practice.guidance_share = dice.between(30, 100) * 10;
    practice.closest_share = dice.between(5, 40) * 10;
    return practice;
}

std::vector<trade::Drill> every_drill() {
    std::vector<trade::Drill> all;
    for (std::int64_t of_64 = 3; of_64 <= 112; ++of_64) {
        all.push_back({fraction_name(of_64), trade::DrillKind::fraction, sixty_fourths(of_64)});
    }
    for (std::size_t i = 0; i < k_number_drills.size(); ++i) {
        all.push_back({fmt::format("#{}", i + 1), trade::DrillKind::number,
                       inches_e5(k_number_drills[i] * 10)});
    }
    for (std::size_t i = 0; i < k_letter_drills.size(); ++i) {
        all.push_back({std::string(1, static_cast<char>('A' + i)), trade::DrillKind::letter,
                       thousandths(k_letter_drills[i])});
    }
    for (std::int64_t tenths = 10; tenths <= 320; tenths += tenths < 130 ? 1 : 5) {
        all.push_back(metric_drill(tenths));
    }
    sort_by_diameter(all);
    return all;
}

std::vector<trade::Drill> random_drills(Dice& dice, const trade::Screw& screw,
                                        const std::vector<trade::Drill>& all_drills) {
    const length::Range dia = screw.screw_dia.value_or(
        length::exactly(screw.head_dia ? screw.head_dia->hi * 2 / 3 : sixty_fourths(16)));
    const bool inch = dice.chance(70);
    const std::int64_t kept = dice.pick(std::vector<std::int64_t>{10, 25, 50});
    std::vector<trade::Drill> owned;
    for (const trade::Drill& drill : all_drills) {
        const bool near = drill.diameter * 100 > dia.lo * 94 && drill.diameter * 100 < dia.hi * 128;
        const bool of_kind = (drill.kind != trade::DrillKind::metric) == inch || dice.chance(10);
        const bool published = is_published(screw, drill) && dice.chance(60);
        if (published || (near && of_kind && dice.chance(kept))) {
            owned.push_back(drill);
        }
    }
    if (screw.screw_dia && dice.chance(30)) {
        const Length play = inches_e5(dice.between(0, 250));
        owned.push_back({"size on size", trade::DrillKind::fraction, screw.screw_dia->hi + play});
    }
    if (!owned.empty() && dice.chance(30)) {
        const trade::Drill twin = dice.pick(owned);
        if (twin.kind != trade::DrillKind::metric) {
            owned.push_back(twin_of(twin, trade::DrillKind::metric));
        }
    }
    sort_by_diameter(owned);
    return owned;
}

trade::Dimension measured(Dice& dice, Length nominal) {
    struct Limits {
        std::int64_t under, over; // hundred-thousandths of an inch
        trade::How how;
    };
    const Limits limits = dice.weighted<Limits>({{12, {0, 0, trade::How::micrometer}},
                                                 {38, {20, 20, trade::How::micrometer}},
                                                 {18, {100, 100, trade::How::caliper}},
                                                 {22, {300, 100, trade::How::mark}},
                                                 {11, {1500, 1500, trade::How::rule}},
                                                 {4, {6250, 6250, trade::How::guess}}});
    const Length least = inches_e5(1000);
    const Length value = std::max(nominal, least);
    trade::Dimension dimension;
    dimension.how = limits.how;
    dimension.range = {std::max(value - inches_e5(limits.under), least),
                       value + inches_e5(limits.over)};
    return dimension;
}

trade::MaybeDimension perhaps_unknown(Dice& dice, std::int64_t percent, Length nominal) {
    if (dice.chance(percent)) {
        return std::nullopt;
    }
    return measured(dice, nominal);
}

} // namespace oracle
