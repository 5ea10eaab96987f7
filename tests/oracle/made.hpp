// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Whether a tool was made for the screw: by its marking, or by the sizes of the published ones.
#pragma once

#include "oracle/triple.hpp"

namespace oracle {

// A listed tool, or one whose marking names the screw, comes before one with the cutter of a
// published size and a pilot for a published hole; neither of the last two was made for the screw.
enum class Made { by_marking, by_sizes, for_the_head, by_cutter_alone, not_so };
[[nodiscard]] Made how_made(const Context& context, const Triple& triple);
// 0 made for it, 1 for the head, 2 not.
[[nodiscard]] int made_rank(const Context& context, const Triple& triple);

} // namespace oracle
