// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the makers of random bodies and pilots share.
#pragma once

#include <string>
#include <vector>

#include "oracle/holes.hpp"
#include "oracle/random_catalogue.hpp"

namespace oracle {

// The sizes at which the rules turn, for one question.
struct Aim {
    length::Range head;
    length::Length tool;
    length::Length published;
    length::Length limit;
    length::Length depth;
    std::vector<HoleChoice> holes;              // at least one
    std::vector<length::Length> bores;          // so few that pilots fit several bodies
    std::vector<length::Length> listed_cutters; // published for the screw, as nominal sizes
    std::vector<length::Length> listed_pilots;
    std::vector<std::string> markings; // with what names the screw, and what nearly does
    std::int64_t trouble = 0;          // percent of tools with something the matter
};

[[nodiscard]] trade::Dimension random_pilot_dia(Dice& dice, const Aim& aim);
[[nodiscard]] length::Length random_pilot_length(Dice& dice, const Aim& aim);
[[nodiscard]] std::optional<trade::Condition> random_condition(Dice& dice, const Aim& aim);
[[nodiscard]] std::vector<std::string> random_work(Dice& dice, const Aim& aim);

// Without its number.
[[nodiscard]] trade::Body random_body(Dice& dice, const match::Question& question, const Aim& aim);
// A pilot made for `body` or something near it. Without its number and place.
[[nodiscard]] trade::Pilot random_pilot(Dice& dice, const Aim& aim, const trade::Body& body);

} // namespace oracle
