// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A catalogue of bodies, pilots and tried pairs for one question.
#include "oracle/random_tools.hpp"

#include <algorithm>
#include <numeric>

#include "oracle/sizes.hpp"

namespace oracle {

using length::Length;
using length::sixty_fourths;

namespace {

std::vector<HoleChoice> holes_to_aim_at(const match::Question& question, const match::Shop& shop) {
    if (question.hole.kind != match::HoleKind::chosen) {
        return {given_hole(question, shop)};
    }
    std::vector<HoleChoice> holes = holes_to_choose(question, shop);
    if (holes.empty()) {
        holes.push_back({std::nullopt, length::exactly(sixty_fourths(18)), false});
    }
    return holes;
}

std::vector<std::string> markings_for(const trade::Screw& screw) {
    std::vector<std::string> found = {"HSS", "test screw"};
    if (screw.size) {
        found.insert(found.end(), {screw.size->text, screw.size->text + " test screw",
                                   "for " + screw.size->text + " test screw HSS"});
    }
    return found;
}

Aim aim_for(Dice& dice, const match::Question& question, const match::Shop& shop) {
    Aim aim;
    aim.head = what_goes_in(question).value_or(length::exactly(sixty_fourths(28)));
    const Targets target =
        targets(question, shop)
            .value_or(Targets{sixty_fourths(30), sixty_fourths(32), sixty_fourths(39)});
    aim.tool = target.tool;
    aim.published = target.published;
    aim.limit = target.limit;
    aim.depth = depth_to_cut(question, shop).value_or(sixty_fourths(20));
    aim.holes = holes_to_aim_at(question, shop);
    const Length hole = aim.holes.front().range->lo;
    const std::int64_t kinds = dice.between(1, 3);
    for (std::int64_t i = 0; i < kinds; ++i) {
        aim.bores.push_back(dice.chance(70) ? dice.part_of(hole, 500, 900)
                                            : dice.part_of(hole, 960, 1200));
    }
    for (const trade::Counterbore& row : question.screw.counterbores) {
        aim.listed_cutters.push_back(row.diameter);
    }
    for (const trade::PublishedTool& tool : question.screw.tools) {
        aim.listed_cutters.push_back(tool.cut_dia.listed->lo);
        aim.listed_pilots.push_back(tool.pilot_dia.listed->lo);
    }
    aim.markings = markings_for(question.screw);
    aim.trouble = dice.pick(std::vector<std::int64_t>{0, 6, 24});
    return aim;
}

// Numbers as a shop gives them out: bodies and pilots in one sequence, in any order.
std::vector<std::int64_t> shuffled_numbers(Dice& dice, std::int64_t count) {
    std::vector<std::int64_t> numbers(static_cast<std::size_t>(count));
    std::iota(numbers.begin(), numbers.end(), 1);
    for (std::size_t i = numbers.size(); i > 1; --i) {
        std::swap(numbers[i - 1],
                  numbers[static_cast<std::size_t>(dice.below(static_cast<std::int64_t>(i)))]);
    }
    return numbers;
}

trade::Tried random_way(Dice& dice) {
    using trade::Tried;
    return dice.weighted<Tried>({{35, Tried::slides_and_holds},
                                 {25, Tried::slides},
                                 {16, Tried::binds},
                                 {12, Tried::loose},
                                 {12, Tried::will_not_go}});
}

const trade::Body& body_to_aim_at(Dice& dice, const std::vector<trade::Body>& bodies) {
    const trade::Body& body = dice.pick(bodies);
    return body.bore ? body : dice.pick(bodies);
}

void add_trial(Dice& dice, Tools& tools, const trade::Pilot& pilot, const trade::Body& body) {
    for (const trade::Trial& trial : tools.trials) {
        if (trial.pilot == pilot.number && trial.body == body.number) {
            return;
        }
    }
    tools.trials.push_back({pilot.number, body.number, random_way(dice)});
}

void add_pilot(Dice& dice, Tools& tools, const Aim& aim, std::int64_t number) {
    static const trade::Body nothing;
    const trade::Body& body = tools.bodies.empty() ? nothing : body_to_aim_at(dice, tools.bodies);
    trade::Pilot pilot = !tools.pilots.empty() && dice.chance(12) ? dice.pick(tools.pilots)
                                                                  : random_pilot(dice, aim, body);
    pilot.number = number;
    pilot.in_body.reset();
    if (!tools.bodies.empty()) {
        if (dice.chance(25)) {
            pilot.in_body = dice.chance(70) ? body.number : dice.pick(tools.bodies).number;
        }
        if (dice.chance(25)) {
            add_trial(dice, tools, pilot, body);
        }
        if (dice.chance(8)) {
            add_trial(dice, tools, pilot, dice.pick(tools.bodies));
        }
    }
    tools.pilots.push_back(std::move(pilot));
}

} // namespace

Tools random_tools(Dice& dice, const match::Question& question, const match::Shop& shop) {
    const Aim aim = aim_for(dice, question, shop);
    const std::int64_t bodies = dice.between(dice.chance(5) ? 0 : 6, 17);
    const std::int64_t pilots = dice.chance(20) ? dice.between(0, 2) : dice.between(5, 14);
    const std::vector<std::int64_t> numbers = shuffled_numbers(dice, bodies + pilots);
    auto number = numbers.begin();
    Tools tools;
    for (std::int64_t i = 0; i < bodies; ++i) {
        trade::Body body = !tools.bodies.empty() && dice.chance(12)
                               ? dice.pick(tools.bodies)
                               : random_body(dice, question, aim);
        body.number = *number++;
        tools.bodies.push_back(std::move(body));
    }
    for (std::int64_t i = 0; i < pilots; ++i) {
        add_pilot(dice, tools, aim, *number++);
    }
    const auto by_number = [](const auto& a, const auto& b) { return a.number < b.number; };
    std::sort(tools.bodies.begin(), tools.bodies.end(), by_number);
    std::sort(tools.pilots.begin(), tools.pilots.end(), by_number);
    std::sort(tools.trials.begin(), tools.trials.end(),
              [](const trade::Trial& a, const trade::Trial& b) {
                  return a.pilot != b.pilot ? a.pilot < b.pilot : a.body < b.body;
              });
    return tools;
}

} // namespace oracle
