// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Lengths as a machinist writes them, the same in the sheet's tables, its section of the hole and
// its callout.
#pragma once

#include <string>

#include "job/figure.hpp"
#include "length/length.hpp"

namespace job {

// To .001 in, or 0.1 mm (close: 0.01 mm), half away from zero, without a unit: `.328`, `8.6`.
[[nodiscard]] std::string shop_text(length::Length value, length::Unit unit,
                                    Grain grain = Grain::usual);

// `.328 to .335`, or one number where both ends are written alike.
[[nodiscard]] std::string shop_text(const length::Range& range, length::Unit unit,
                                    Grain grain = Grain::usual);

// The nearest 1/64 in: `21/64`; empty under 1/128.
[[nodiscard]] std::string nearest_fraction(length::Length value);

} // namespace job
