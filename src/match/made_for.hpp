// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tools that were made for a screw: those that a handbook or standard lists for it, and those
// whose marking names it; and, after them, those of the size of a published counterbore for this
// very head whose pilot runs in a published hole of it.
#pragma once

#include <vector>

#include "length/range.hpp"
#include "match/size_class.hpp"
#include "trade/number_set.hpp"
#include "trade/practice.hpp"

namespace match {

// A listed tool, as it may measure by its mark.
struct MadeTool {
    length::Range cutter;
    length::Range pilot;
};

struct MadeFor {
    std::vector<length::Range> cutters; // of the tools and the counterbores
    std::vector<MadeTool> tools;
    trade::NumberSet marked; // bodies
};

[[nodiscard]] MadeFor made_for(const trade::Screw& screw, const SizeTargets& sizes,
                               const trade::Practice& practice);

// Whether `size`, whatever it measures within its limits, is one of them.
[[nodiscard]] bool is_of(const std::vector<length::Range>& listed, const length::MaybeRange& size);

[[nodiscard]] bool is_listed(const std::vector<MadeTool>& tools, const length::MaybeRange& cutter,
                             const length::MaybeRange& pilot);

// What a body's cutter and marking leave to its pilot and hole.
enum class Made { surely, with_its_pilot, not_so };

} // namespace match
