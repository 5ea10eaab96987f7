// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The holes that a question allows: what a drill leaves, which drills the screw lets the shop use,
// and how well a pilot runs in the hole that they leave on average.
#pragma once

#include <optional>
#include <vector>

#include "match/question.hpp"

namespace oracle {

// A hole to judge by, with the drill that makes it if one is named. No range: there is no hole.
struct HoleChoice {
    std::optional<trade::Drill> drill;
    length::MaybeRange range;
};

[[nodiscard]] length::Range drilled(const match::Shop& shop, const trade::Drill& drill);

// Owned drills whose hole is surely not under the screw and whose name is not over its loose hole.
[[nodiscard]] std::vector<trade::Drill> drills_for_screw(const match::Question& question,
                                                         const match::Shop& shop);

// The hole that the question names. Not for a hole left to the pilot.
[[nodiscard]] HoleChoice given_hole(const match::Question& question, const match::Shop& shop);

// 0 close, 1 normal, 2 loose, 3 none of them.
[[nodiscard]] int published_rank(const match::Question& question,
                                 const std::optional<trade::Drill>& drill);

// Twice the distance of the average clearance from the middle of good, in nm.
[[nodiscard]] std::optional<std::int64_t> closeness(const match::Shop& shop, const HoleChoice& hole,
                                                    const length::MaybeRange& pilot_dia);

} // namespace oracle
