// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Rounding to figures that a person can set on a dial or read on a rule, never past a limit.
#pragma once

#include "length/range.hpp"

namespace length {

// To the multiple of `step` at or below, at or above. Values are >= 0, step > 0.
constexpr Length round_down(Length value, Length step) {
    return Length::from_nm(value.nm() / step.nm() * step.nm());
}
constexpr Length round_up(Length value, Length step) {
    return Length::from_nm((value.nm() + step.nm() - 1) / step.nm() * step.nm());
}

// The widest range on the grid that lies inside; the range itself where the grid is too coarse.
constexpr Range inward(const Range& range, Length step) {
    const Range inside{round_up(range.lo, step), round_down(range.hi, step)};
    return inside.lo <= inside.hi ? inside : range;
}

constexpr Length middle(const Range& range) {
    return range.lo + (range.hi - range.lo) / 2;
}

// One of two lengths: the figure that each system uses for the same thing.
constexpr Length in_unit(Unit unit, Length inch, Length metric) {
    return unit == Unit::inch ? inch : metric;
}

// What a micrometer shows: .0001 in or 0.001 mm.
constexpr Length fine_step(Unit unit) {
    return in_unit(unit, inches_e5(10), micrometres(1));
}
// What a dial caliper shows: .001 in or 0.05 mm.
constexpr Length coarse_step(Unit unit) {
    return in_unit(unit, thousandths(1), micrometres(50));
}

} // namespace length
