// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A dimension of a tool: as written, how it is known, and the range that this allows.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "length/parse.hpp"
#include "length/range.hpp"
#include "trade/practice.hpp"
#include "trade/words.hpp"

namespace trade {

struct Dimension {
    std::string text;
    How how = How::unstated;
    length::Range range;

    bool operator==(const Dimension&) const = default;
};

using MaybeDimension = std::optional<Dimension>;

// What is measured: decides the limits of a mark, the limits of a value whose method nobody
// stated, and which sizes are plausible.
enum class Feature {
    cut_dia,
    pilot_dia,
    pilot_length,
    bore,
    bore_depth,
    pilot_shank_dia,
    pilot_shank_length,
    flat_at,
    flat_length,
    flat_depth,
    set_screw_at,
    reach,
    shank_dia,
    head_dia,
    head_height,
    screw_dia,
    hole,
    thickness,
};

[[nodiscard]] std::string_view to_text(Feature);

// Reads a cell into a dimension. Limits written in the cell stand; else they come from `how` and
// the practice table (mark on a cutter -.003 +.001, caliper +-.001, ...; a fraction or a plain
// metric size marked on a pilot names its hole, .001 to .004 over the pilot or e8; unstated: a
// fraction as a mark where the feature carries marks, else +-1/64; a decimal +-.002).
// A flat may start at the very end of the shank: 0, exactly.
// Throws error::BadData, also for sizes that the feature cannot have.
[[nodiscard]] Dimension read_dimension(std::string_view text, How how, Feature feature,
                                       length::Unit bare, const Practice& practice);

// A pilot marked with the name of the hole that it was made to run in: .001 to .004 under it.
// Throws error::BadData for a hole that no pilot runs in.
[[nodiscard]] Dimension mark_of_hole(std::string_view text, length::Length hole,
                                     const Practice& practice);

// The range of a bare value taken with `how`.
[[nodiscard]] length::Range limits_of(const length::Written& written, How how, Feature feature,
                                      const Practice& practice);

[[nodiscard]] inline length::MaybeRange range_of(const MaybeDimension& dimension) {
    return dimension ? length::MaybeRange(dimension->range) : std::nullopt;
}

} // namespace trade
