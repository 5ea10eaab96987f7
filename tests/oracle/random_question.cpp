// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is asked about the screw.
#include <algorithm>

#include "oracle/holes.hpp"
#include "oracle/random_catalogue.hpp"
#include "oracle/sizes.hpp"

namespace oracle {

using length::Length;
using length::Range;
using length::sixty_fourths;
using length::thousandths;

namespace {

// Something about as large as the screw, where nobody said how large it is.
Length about_screw(const trade::Screw& screw) {
    if (screw.screw_dia) {
        return screw.screw_dia->hi;
    }
    return screw.head_dia ? screw.head_dia->hi * 2 / 3 : sixty_fourths(16);
}

match::Hole named_hole(const trade::Drill& drill, std::string text) {
    match::Hole hole;
    hole.kind = match::HoleKind::drilled;
    hole.text = std::move(text);
    hole.drill = drill;
    return hole;
}

match::Hole drilled_near(Dice& dice, Length wanted, const std::vector<trade::Drill>& drills) {
    const auto above = std::find_if(drills.begin(), drills.end(), [&](const trade::Drill& drill) {
        return drill.diameter >= wanted;
    });
    const trade::Drill& drill = above == drills.end() || dice.chance(10) ? drills.back() : *above;
    return named_hole(drill, drill.name);
}

match::Hole published_hole(Dice& dice, const trade::Screw& screw,
                           const std::vector<trade::Drill>& drills) {
    const auto hole = dice.pick(
        std::vector<std::optional<trade::Clearance::Hole>>{screw.close, screw.normal, screw.loose});
    for (const trade::Drill& drill : drills) {
        if (hole && drill.name == hole->drill) {
            return named_hole(drill, "close");
        }
    }
    return {};
}

match::Hole random_hole(Dice& dice, const trade::Screw& screw,
                        const std::vector<trade::Drill>& drills) {
    const Length dia = about_screw(screw);
    const std::int64_t way = dice.below(100);
    if (way < 55) {
        return {};
    }
    if (way < 70) {
        return published_hole(dice, screw, drills);
    }
    if (way < 80) {
        return drilled_near(dice, dice.part_of(dia, 920, 1180), drills);
    }
    if (way < 88) {
        match::Hole tap = drilled_near(dice, dice.part_of(dia, 780, 880), drills);
        tap.text = "tap";
        tap.tapped = true;
        return tap;
    }
    match::Hole hole;
    hole.kind = match::HoleKind::measured;
    hole.text = "measured";
    const std::int64_t most = dice.chance(10) ? 1700 : 1160;
    hole.measured = measured(dice, dice.part_of(dia, 990, most)).range;
    return hole;
}

match::Washer random_washer(Dice& dice, const trade::Screw& screw) {
    const Length head = screw.head_dia ? screw.head_dia->hi : about_screw(screw) * 3 / 2;
    match::Washer washer;
    washer.name = "test washer";
    washer.outside_dia = measured(dice, dice.part_of(head, 950, 1350)).range;
    if (dice.chance(70)) {
        washer.thickness = measured(dice, sixty_fourths(dice.between(2, 8))).range;
    }
    return washer;
}

trade::Machine random_machine(Dice& dice) {
    trade::Machine machine;
    machine.name = "test drill press";
    if (dice.chance(75)) {
        machine.chuck =
            Range{sixty_fourths(dice.between(1, 16)), sixty_fourths(dice.between(24, 48))};
    }
    if (dice.chance(65)) {
        machine.morse = static_cast<int>(dice.between(1, 3));
    }
    return machine;
}

void add_thickness(Dice& dice, match::Question& question, const match::Shop& shop) {
    const Length cut = depth_to_cut(question, shop).value_or(about_screw(question.screw));
    const std::int64_t way = dice.below(100);
    if (way < 14) {
        question.thick =
            measured(dice, dice.part_of(cut, 950, dice.chance(50) ? 1800 : 3500)).range;
    } else if (way < 30) {
        question.blind =
            measured(dice, cut + dice.part_of(about_screw(question.screw), 300, 2500)).range;
    } else if (way < 34) {
        question.blind = measured(dice, dice.part_of(cut, 900, 1300)).range;
    } else if (way < 36) {
        question.thick = length::exactly(cut);
    }
}

} // namespace

match::Question random_question(Dice& dice, const trade::Screw& screw, const match::Shop& shop,
                                const std::vector<trade::Drill>& all_drills) {
    match::Question question;
    question.screw = screw;
    question.hole = random_hole(dice, screw, all_drills);
    if (dice.chance(14)) {
        question.washer = random_washer(dice, screw);
    }
    question.below = dice.pick(std::vector<std::optional<Length>>{
        std::nullopt, std::nullopt, Length(), sixty_fourths(1), thousandths(dice.between(1, 62))});
    add_thickness(dice, question, shop);
    if (dice.chance(25)) {
        question.machine = random_machine(dice);
    }
    if (dice.chance(10)) {
        question.set = dice.pick(std::vector<std::string>{"works", "school"});
    }
    return question;
}

RandomCase random_case(std::uint64_t seed) {
    Dice dice(seed);
    const std::vector<trade::Drill> all_drills = every_drill();
    RandomCase made;
    made.unit = dice.chance(70) ? length::Unit::inch : length::Unit::millimetre;
    const trade::Screw screw = random_screw(dice, all_drills);
    made.shop.practice = random_practice(dice);
    made.shop.oversize = usual_oversize();
    if (dice.chance(90)) {
        made.shop.drilled_holes = usual_drilled_holes();
    }
    made.shop.drills = random_drills(dice, screw, all_drills);
    made.question = random_question(dice, screw, made.shop, all_drills);
    made.tools = random_tools(dice, made.question, made.shop);
    return made;
}

} // namespace oracle
