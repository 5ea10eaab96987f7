// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Writing lengths for people and for files.
#pragma once

#include <string>

#include "length/range.hpp"

namespace length {

// Shop form, always exact enough to read back: inches without a leading zero and with at least
// three decimals (`.4375`, `1.500`), millimetres plain (`10`, `0.35`). No unit is appended.
// Values off the unit's grid (5 decimals of an inch, 6 of a millimetre) are rounded half away.
[[nodiscard]] std::string to_text(Length value, Unit unit);

// As `to_text`, at most `decimals` places, half away from zero: for computed values.
[[nodiscard]] std::string to_text(Length value, Unit unit, int decimals);

// With its unit: `.4375 in`, `10 mm`.
[[nodiscard]] std::string with_unit(Length value, Unit unit);

// `lo to hi` in shop form without a unit; one value if lo == hi.
[[nodiscard]] std::string to_text(const Range& range, Unit unit);

// The fraction where the length is a whole number of 64ths (`7/16`, `1-1/2`), else empty.
[[nodiscard]] std::string as_fraction(Length value);

// For JSON: millimetres as a double; exact to the nanometre on printing the shortest form.
[[nodiscard]] double as_mm(Length value);

} // namespace length
