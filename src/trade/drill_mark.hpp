// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A pilot diameter as it is entered: a size, or the number or letter of the drill whose hole the
// pilot was made to run in. A drill's name is a mark, and its diameter is that of the tables.
#pragma once

#include <string_view>

#include "trade/dimension.hpp"
#include "trade/tables.hpp"

namespace trade {

// As `read_dimension` for a pilot's diameter; also `#7`, `F`, `no. 7`, `letter F`, `drill F`, kept
// as written and known by mark. Throws error::BadData, also for a number that no drill has, a
// small letter alone, and a drill's name that is said to be measured.
[[nodiscard]] Dimension read_pilot_dia(std::string_view text, How how, length::Unit bare,
                                       const Practice& practice, const Tables& tables);

// Throws error::BadData for a drill's name with more behind it: `F +-.001`, `#10-32`.
void refuse_more_than_a_drill(std::string_view text);

} // namespace trade
