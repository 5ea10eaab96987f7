// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Bodies near the sizes that the question asks for.
#include "oracle/random_tools.hpp"

namespace oracle {

using length::inches_e5;
using length::Length;
using length::sixty_fourths;
using length::thousandths;

namespace {

trade::BodyKind random_kind(Dice& dice, bool hex) {
    using trade::BodyKind;
    return dice.weighted<BodyKind>({{hex ? 35 : 72, BodyKind::counterbore},
                                    {hex ? 35 : 8, BodyKind::spotfacer},
                                    {hex ? 8 : 4, BodyKind::back_spotfacer},
                                    {hex ? 8 : 4, BodyKind::other},
                                    {12, BodyKind::unknown}});
}

// Around the sizes where a class of size begins or ends, or where a head just goes in.
Length random_cutter(Dice& dice, const Aim& aim) {
    const Length jitter = inches_e5(dice.between(-300, 300));
    if (!aim.listed_cutters.empty() && dice.chance(25)) {
        return dice.pick(aim.listed_cutters) + (dice.chance(60) ? Length() : jitter);
    }
    switch (dice.below(7)) {
    case 0:
        return aim.head.hi + thousandths(5) + (dice.chance(30) ? Length() : jitter);
    case 1:
        return aim.tool + jitter;
    case 2:
        return aim.published + (dice.chance(50) ? Length() : jitter);
    case 3:
        return aim.published + thousandths(10) + jitter;
    case 4:
        return aim.limit + (dice.chance(30) ? Length() : jitter * 4);
    case 5:
        return aim.head.lo + (aim.head.hi - aim.head.lo) / 2 + jitter * 3;
    default:
        return dice.part_of(aim.head.hi, 800, 1600);
    }
}

void add_own_pilot(Dice& dice, trade::Body& body, const Aim& aim) {
    if (!dice.chance(10)) {
        body.pilot_dia = random_pilot_dia(dice, aim);
    }
    body.pilot_length = perhaps_unknown(dice, 30, random_pilot_length(dice, aim));
}

void add_bore(Dice& dice, trade::Body& body, const Aim& aim) {
    using trade::Retention;
    const Length jitter = inches_e5(dice.between(-20, 20));
    body.bore = perhaps_unknown(dice, 12, dice.pick(aim.bores) + jitter);
    body.bore_depth = perhaps_unknown(dice, 40, dice.part_of(aim.bores.front(), 1500, 3000));
    body.retention = dice.weighted<std::optional<Retention>>({{50, Retention::set_screw},
                                                              {15, std::nullopt},
                                                              {12, Retention::detent},
                                                              {12, Retention::threaded},
                                                              {6, Retention::sleeve},
                                                              {5, Retention::other}});
    if (body.retention == Retention::set_screw || dice.chance(10)) {
        body.set_screw =
            dice.pick(std::vector<std::string>{"#5-40", "#8-32", "#10-24", "1/4-20", "M4", ""});
        body.set_screw_at = perhaps_unknown(dice, 25, sixty_fourths(dice.between(10, 20)));
    }
}

void add_shank(Dice& dice, trade::Body& body) {
    body.shank_kind =
        dice.pick(std::vector<std::string>{"", "", "straight", "Morse 1", "Morse 2", "square"});
    body.shank_dia = perhaps_unknown(dice, 25, sixty_fourths(dice.between(12, 52)));
}

trade::PilotKind random_pilot_kind(Dice& dice) {
    using trade::PilotKind;
    return dice.weighted<PilotKind>({{60, PilotKind::removable},
                                     {20, PilotKind::integral},
                                     {13, PilotKind::unknown},
                                     {7, PilotKind::none}});
}

Length random_reach(Dice& dice, const Aim& aim) {
    return dice.chance(20) ? aim.depth : dice.part_of(aim.depth, 700, 2500);
}

} // namespace

trade::Body random_body(Dice& dice, const match::Question& question, const Aim& aim) {
    trade::Body body;
    body.kind = random_kind(dice, question.screw.hex);
    body.pilot_kind = random_pilot_kind(dice);
    body.cut_dia = perhaps_unknown(dice, 7, random_cutter(dice, aim));
    if (body.pilot_kind == trade::PilotKind::integral) {
        add_own_pilot(dice, body, aim);
    } else if (body.pilot_kind == trade::PilotKind::unknown && dice.chance(50)) {
        add_own_pilot(dice, body, aim);
    } else if (body.pilot_kind != trade::PilotKind::none) {
        add_bore(dice, body, aim);
    }
    body.reach = perhaps_unknown(dice, 50, random_reach(dice, aim));
    add_shank(dice, body);
    body.set = dice.pick(std::vector<std::string>{"", "works", "works", "school"});
    body.condition = random_condition(dice, aim);
    body.work = random_work(dice, aim);
    if (dice.chance(aim.trouble / 2)) {
        body.retired = "worn out";
    }
    if (dice.chance(aim.trouble / 2)) {
        body.loan = "a neighbour";
    }
    if (dice.chance(12)) {
        body.marking = dice.pick(aim.markings);
    }
    body.place = "rack";
    return body;
}

} // namespace oracle
