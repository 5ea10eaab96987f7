// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Reading lengths as a shop writes them. Independent of the locale; what cannot be read is refused
// with a message that says what could be.
#pragma once

#include <string_view>

#include "length/range.hpp"

namespace length {

// One length as written.
struct Written {
    Length value;
    Unit unit;     // as written, or the unit given for bare numbers
    bool fraction; // written as a fraction (3/8, 1-1/2): a mark or a nominal, not a measurement
    bool unit_said = false; // the text says its unit; a fraction is in inches without saying so
};

// A dimension as written: a value, perhaps with its limits.
struct Reading {
    Written nominal;   // for go / no-go limits: the middle
    MaybeRange limits; // absent when the text gives none
};

// Reads `3/8`, `1-1/2`, `1 1/2`, `.375`, `0.375 in`, `3/8"`, `10 mm`, `10mm`.
// Fractions to 1/64, inches to 5 decimals, millimetres to 6. Bare numbers are in `bare`; a fraction
// is always in inches.
// Throws error::BadData for anything else: zero, negatives, finer values, over 10 m, trailing text.
[[nodiscard]] Written parse_length(std::string_view text, Unit bare);

// As `parse_length`, but zero is a length too: for allowances and limits.
[[nodiscard]] Written parse_length_or_zero(std::string_view text, Unit bare);

// Reads a length, or one with limits: `.5935 +-.0002`, `.5935 ±.0002`, `.5935 +.0002 -.0003` (in
// either order), `go .1250 no-go .1260` (either may be the larger). A limit may be zero. A bare
// limit takes its value's unit, else the value takes the limit's, else `bare`. Throws
// error::BadData, also where a limit would take the value to zero or below.
[[nodiscard]] Reading parse_reading(std::string_view text, Unit bare);

// As `parse_reading`, but zero without limits is a reading too: for what may be no distance at all.
[[nodiscard]] Reading parse_reading_or_zero(std::string_view text, Unit bare);

} // namespace length
