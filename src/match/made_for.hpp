// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tools that were made for a screw: those of the size of a published tool or counterbore for
// this very head, with a pilot for its holes, and those whose marking names it.
#pragma once

#include <vector>

#include "length/range.hpp"
#include "match/size_class.hpp"
#include "trade/number_set.hpp"
#include "trade/practice.hpp"

namespace match {

// What such tools may measure, by their marks.
struct MadeFor {
    std::vector<length::Range> cutters;
    std::vector<length::Range> pilots;
    trade::NumberSet marked; // bodies
};

[[nodiscard]] MadeFor made_for(const trade::Screw& screw, const SizeTargets& sizes,
                               const trade::Practice& practice);

// Whether `size` may be one of them.
[[nodiscard]] bool may_be_of(const std::vector<length::Range>& listed,
                             const length::MaybeRange& size);

// What a body's cutter and marking leave to its pilot.
enum class Made { surely, with_its_pilot, not_so };

} // namespace match
