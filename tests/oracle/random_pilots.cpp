// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Pilots near the question's holes, with shanks near the bores of its bodies.
#include "oracle/random_tools.hpp"

namespace oracle {

using length::inches_e5;
using length::Length;
using length::Range;
using length::sixty_fourths;
using length::thousandths;

namespace {

// Under a bore or a hole by about so much, in hundred-thousandths of an inch.
const std::vector<std::int64_t> k_slip = {20, 30, 40, 60, 80, 100, 150, 200, 250, 400, -100, -1500};
const std::vector<std::int64_t> k_running = {50,  79,  80,  100,  150,  200,  250,  300,  400, 500,
                                             600, 800, 900, 1000, 1200, 1300, 1500, 2500, -600};

void add_flat(Dice& dice, trade::Pilot& pilot, const trade::Body& body) {
    const std::int64_t way = dice.below(100);
    if (way < 15) {
        pilot.has_flat = false;
        return;
    }
    if (way < 40) {
        return;
    }
    pilot.has_flat = true;
    if (way < 50) {
        return;
    }
    Length axis = sixty_fourths(16);
    if (pilot.shank_length && body.set_screw_at) {
        axis = pilot.shank_length->range.lo - body.set_screw_at->range.lo;
    }
    const Length off = sixty_fourths(dice.between(2, 8));
    pilot.flat_at = perhaps_unknown(dice, 10, std::max(axis - off, sixty_fourths(1)));
    pilot.flat_length = perhaps_unknown(dice, 10, sixty_fourths(dice.between(4, 24)));
}

} // namespace

// For a listed tool's hole, or for one of the holes that the screw may go through: marked with it,
// or so far under it.
trade::Dimension random_pilot_dia(Dice& dice, const Aim& aim) {
    const Range size = *judged_by(dice.pick(aim.holes));
    Length hole = dice.chance(50) ? size.lo : size.hi;
    if (!aim.listed_pilots.empty() && dice.chance(15)) {
        hole = dice.pick(aim.listed_pilots);
    }
    if (dice.chance(8)) {
        return measured(dice, dice.part_of(hole, 500, 1100));
    }
    if (dice.chance(25)) {
        const Range marked = {hole - thousandths(4), hole - thousandths(1)};
        return {"", trade::How::mark, marked};
    }
    return measured(dice, hole - inches_e5(dice.pick(k_running)));
}

Length random_pilot_length(Dice& dice, const Aim& aim) {
    return dice.part_of(aim.holes.front().range->lo, 300, 1800);
}

std::optional<trade::Condition> random_condition(Dice& dice, const Aim& aim) {
    using trade::Condition;
    if (dice.chance(aim.trouble)) {
        return dice.pick(std::vector<Condition>{Condition::dull, Condition::dirty, Condition::rough,
                                                Condition::broken});
    }
    return dice.pick(std::vector<std::optional<Condition>>{std::nullopt, Condition::good,
                                                           Condition::good, Condition::fair});
}

std::vector<std::string> random_work(Dice& dice, const Aim& aim) {
    if (dice.chance(aim.trouble)) {
        return {"clean the bore"};
    }
    return {};
}

trade::Pilot random_pilot(Dice& dice, const Aim& aim, const trade::Body& body) {
    trade::Pilot pilot;
    if (!dice.chance(8)) {
        pilot.pilot_dia = random_pilot_dia(dice, aim);
    }
    if (pilot.pilot_dia && dice.chance(40)) {
        pilot.pilot_dia->range = length::exactly(pilot.pilot_dia->range.lo);
    }
    pilot.pilot_length = perhaps_unknown(dice, 25, random_pilot_length(dice, aim));
    const Length bore = body.bore ? body.bore->range.lo : dice.pick(aim.bores);
    const Length shank = bore - inches_e5(dice.pick(k_slip));
    pilot.shank_dia = perhaps_unknown(dice, 8, shank);
    if (pilot.shank_dia && dice.chance(70)) {
        pilot.shank_dia->range = length::exactly(shank);
    }
    pilot.shank_length = perhaps_unknown(dice, 25,
                                         body.bore_depth ? body.bore_depth->range.lo +
                                                               sixty_fourths(dice.between(-12, 4))
                                                         : sixty_fourths(dice.between(30, 60)));
    add_flat(dice, pilot, body);
    pilot.set = dice.pick(std::vector<std::string>{"", "works", "works", "school"});
    pilot.condition = random_condition(dice, aim);
    pilot.work = random_work(dice, aim);
    if (dice.chance(aim.trouble / 3)) {
        pilot.retired = "bent";
    }
    if (dice.chance(aim.trouble / 3)) {
        pilot.loan = "a neighbour";
    }
    pilot.place = "drawer";
    return pilot;
}

} // namespace oracle
