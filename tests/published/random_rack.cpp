// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "random_rack.hpp"

#include <algorithm>
#include <array>

using length::Length;
using length::Range;

namespace published {

namespace {

using trade::BodyKind;
using trade::Condition;
using trade::Tried;

constexpr std::array k_kinds{BodyKind::counterbore, BodyKind::counterbore, BodyKind::counterbore,
                             BodyKind::counterbore, BodyKind::spotfacer,   BodyKind::unknown};
constexpr std::array k_worn{Condition::good,  Condition::good,  Condition::good,
                            Condition::fair,  Condition::fair,  Condition::dull,
                            Condition::rough, Condition::dirty, Condition::broken};
constexpr std::array k_tried{
    Tried::slides_and_holds, Tried::slides_and_holds, Tried::slides, Tried::binds, Tried::loose,
    Tried::will_not_go};

constexpr Length mm(std::int64_t thousandths) {
    return Length::from_nm(thousandths * 1000);
}

trade::Dimension of_size(Length size) {
    return {"", trade::How::unstated, length::exactly(size)};
}

} // namespace

RandomRack::RandomRack(const trade::Screw& screw, Dice& dice) : screw_(screw), dice_(dice) {
    for (std::int64_t number = 1; number <= 12; ++number)
        add(number);
}

// Some sizes are well known, some less, some not at all.
trade::MaybeDimension RandomRack::around(Length middle, std::int64_t off_nm) {
    if (dice_.one_in(12))
        return std::nullopt;
    const auto size = std::max(middle + Length::from_nm(dice_.between(-off_nm, off_nm)), mm(300));
    const auto half = Length::from_nm(dice_.of(std::array<std::int64_t, 3>{0, 5'000, 40'000}));
    return trade::Dimension{"", trade::How::unstated, {size - half, size + half}};
}

template <typename Tool>
void RandomRack::wear(Tool& tool) {
    tool.condition = dice_.of(k_worn);
    if (dice_.one_in(12))
        tool.work = {"see to it"};
    if (dice_.one_in(15))
        tool.retired = "worn out";
    if (dice_.one_in(15))
        tool.loan = "a neighbour";
}

void RandomRack::add(std::int64_t number) {
    const Length screw = screw_.screw_dia->hi;
    trade::Body body;
    body.number = number;
    body.kind = dice_.of(k_kinds);
    body.cut_dia = around(screw_.head_dia->hi + length::thousandths(30), 1'200'000);
    if (screw_.head_height && !dice_.one_in(3))
        body.reach = around(screw_.head_height->hi + mm(500), 1'500'000);
    wear(body);
    // From under the screw to well over the loose hole.
    const Length most = std::max(mm(1500), Length::from_nm(screw.nm() / 5));
    const Length hole =
        screw + Length::from_nm(dice_.between(-100'000, dice_.one_in(3) ? most.nm() : 400'000));
    if (number % 2 != 0) {
        body.pilot_kind = trade::PilotKind::integral;
        body.pilot_dia = around(hole, 100'000);
        body.pilot_length = around(hole, 300'000);
    } else {
        add_removable(body, hole);
    }
    bodies_.push_back(body);
}

// Mostly with a bore of half the hole; sometimes with one of its size, where the teeth may not
// reach the hole.
void RandomRack::add_removable(trade::Body& body, Length hole) {
    const Length bore = dice_.one_in(3) ? hole - mm(100) : Length::from_nm(hole.nm() / 2);
    body.pilot_kind = trade::PilotKind::removable;
    body.bore = around(bore, 150'000);
    body.retention = trade::Retention::set_screw;
    body.set_screw = "#8-32";
    body.set_screw_at = of_size(mm(dice_.between(1000, 9000)));
    trade::Pilot pilot;
    pilot.number = 100 + body.number;
    pilot.pilot_dia = around(hole, 100'000);
    pilot.pilot_length = around(hole, 300'000);
    const Length at_least = body.bore ? body.bore->range.lo : bore;
    pilot.shank_dia = around(at_least - length::inches_e5(100), 40'000);
    pilot.shank_length = of_size(mm(10000));
    pilot.has_flat = !dice_.one_in(3);
    if (*pilot.has_flat) {
        pilot.flat_at = of_size(mm(2000));
        pilot.flat_length = of_size(mm(6000));
    }
    wear(pilot);
    if (dice_.one_in(2))
        trials_.push_back({pilot.number, body.number, dice_.of(k_tried)});
    pilots_.push_back(pilot);
}

match::Question random_question(const trade::Screw& screw, Dice& dice) {
    match::Question question;
    question.screw = screw;
    const Length head = screw.head_dia->hi;
    const Length high = screw.head_height ? screw.head_height->hi : screw.screw_dia->hi;
    if (dice.one_in(4)) {
        const Length washer = head + Length::from_nm(dice.between(-head.nm() / 10, head.nm() / 5));
        question.washer = match::Washer{
            "a washer", {washer - mm(200), washer}, Range{mm(800), mm(1200)}, std::nullopt};
    }
    const Length deep =
        high + Length::from_nm(dice.between(-1'000'000, 3 * screw.screw_dia->hi.nm()));
    if (dice.one_in(4))
        question.thick = Range{deep - mm(20), deep + mm(20)};
    else if (dice.one_in(4))
        question.blind = Range{deep - mm(20), deep + mm(20)};
    return question;
}

} // namespace published
