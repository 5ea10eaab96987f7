// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Drills and the holes they leave.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "length/range.hpp"

namespace trade {

enum class DrillKind { fraction, number, letter, metric }; // in the order equal drills are taken

struct Drill {
    std::string name; // `9/32`, `#7`, `F`, `7 mm`
    DrillKind kind = DrillKind::fraction;
    length::Length diameter; // nominal

    bool operator==(const Drill&) const = default;
};

// One row of the oversize table: by how much a drill of this diameter cuts over its nominal.
struct Oversize {
    length::Length drill;
    length::Length least; // average minimum
    length::Length mean;
    length::Length most; // average maximum
};

// Interpolated linearly between the rows (rounded to the nanometre), flat outside them.
// Rows ascend by drill; at least one.
[[nodiscard]] Oversize oversize_at(const std::vector<Oversize>& rows, length::Length drill);

// The published limit of a drilled hole, for drills over the row before up to `upto`.
struct DrilledHole {
    length::Length upto;
    length::Length over; // the hole is at most so far over the drill
};

// The most that a drill is taken to cut over its size: the larger of the average most and the
// published limit of the drilled hole. Both ascend; rows of `limits` past the last take that.
[[nodiscard]] length::Length most_over(const std::vector<Oversize>& rows,
                                       const std::vector<DrilledHole>& limits,
                                       length::Length drill);

// A number or letter drill's name in canonical spelling: `#7`, `no. 7`, `number 7`, `#7 drill` ->
// `#7`; `f`, `letter F`, `drill F` -> `F`. Does not look the drill up. Empty for anything else.
[[nodiscard]] std::string number_or_letter_drill(std::string_view text);

// A drill's name in canonical spelling: `#7`, `no 7` -> `#7`, `f` -> `F`, `9/32 in` -> `9/32`,
// `1 in` -> `1`, `7mm` -> `7 mm`. Does not look the drill up. Empty when the text is no drill name:
// decimals of an inch, and numbers that say neither # nor a unit.
[[nodiscard]] std::string canonical_drill_name(std::string_view text);

} // namespace trade
