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
    bool reamed = false; // for a shoulder
};

// What a pilot is judged against: the drill itself, or the hole where none is named.
[[nodiscard]] length::MaybeRange judged_by(const HoleChoice& hole);

[[nodiscard]] length::Range drilled(const match::Shop& shop, const trade::Drill& drill);

// Owned drills that are not under the screw's greatest diameter and not over its loose hole.
[[nodiscard]] std::vector<trade::Drill> drills_for_screw(const match::Question& question,
                                                         const match::Shop& shop);

// The hole of a shoulder: reamed to it by ISO 286 H8, in inches by practice. Absent: no shoulder.
[[nodiscard]] std::optional<HoleChoice> reamed_hole(const match::Question& question,
                                                    const match::Shop& shop);

// What the pilot may choose from: the reamed hole of a shoulder, else those drills.
[[nodiscard]] std::vector<HoleChoice> holes_to_choose(const match::Question& question,
                                                      const match::Shop& shop);

// The hole that the question names. Not for a hole left to the pilot.
[[nodiscard]] HoleChoice given_hole(const match::Question& question, const match::Shop& shop);

// In the order of preference. A reamed hole is close.
enum class HoleClass { close, normal, loose, other, size_on_size, none };
[[nodiscard]] HoleClass hole_class(const match::Question& question, const match::Shop& shop,
                                   const HoleChoice& hole);

// Twice the distance of the clearance from the middle of good, in nm.
[[nodiscard]] std::optional<std::int64_t> closeness(const match::Shop& shop, const HoleChoice& hole,
                                                    const length::MaybeRange& pilot_dia);

} // namespace oracle
