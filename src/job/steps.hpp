// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tick list that goes to the machine, and the usual cautions.
#pragma once

#include <string>
#include <vector>

#include "match/answer.hpp"
#include "trade/body.hpp"
#include "trade/tables.hpp"

namespace job {

struct Steps {
    const match::Question& question;
    const match::Answer& answer;
    const trade::Body& body;
    std::string key;                    // of the set screw, where one is known
    std::optional<length::Length> edge; // to which the edge of the hole is broken
    const std::optional<trade::Material>& material;
    length::Unit unit; // of sizes
};

// In the order of work. Figures that the sheet has in its tables are not said again.
[[nodiscard]] std::vector<std::string> steps_for(const Steps& job);

// The drill that goes first, for drills over 1/2 in: about as thick as the web, which is some 15 %
// of the drill, in whole 1/32 in or half millimetres. Empty up to 1/2 in. Common practice.
[[nodiscard]] std::string pilot_drill(const trade::Drill& drill);

// What the material forbids or asks, the gravest first, then the usual: common practice. Local
// rules and the people responsible come first.
[[nodiscard]] std::vector<std::string> cautions(const std::optional<trade::Material>& material);

} // namespace job
