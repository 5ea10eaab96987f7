// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Rounding to figures that a person can set on a dial or read on a rule, never past a limit.
#pragma once

#include "length/range.hpp"

namespace make {

// To the multiple of `step` at or below, at or above. Values are >= 0, step > 0.
constexpr length::Length round_down(length::Length value, length::Length step) {
    return length::Length::from_nm(value.nm() / step.nm() * step.nm());
}
constexpr length::Length round_up(length::Length value, length::Length step) {
    return length::Length::from_nm((value.nm() + step.nm() - 1) / step.nm() * step.nm());
}

// The widest range on the grid that lies inside; the range itself where the grid is too coarse.
constexpr length::Range inward(const length::Range& range, length::Length step) {
    const length::Range inside{round_up(range.lo, step), round_down(range.hi, step)};
    return inside.lo <= inside.hi ? inside : range;
}

constexpr length::Length middle(const length::Range& range) {
    return range.lo + (range.hi - range.lo) / 2;
}

// One of two lengths: the figure that each system uses for the same thing.
constexpr length::Length in_unit(length::Unit unit, length::Length inch, length::Length metric) {
    return unit == length::Unit::inch ? inch : metric;
}

// What a micrometer shows: .0001 in or 0.001 mm.
constexpr length::Length fine_step(length::Unit unit) {
    return in_unit(unit, length::inches_e5(10), length::micrometres(1));
}
// What a dial caliper shows: .001 in or 0.05 mm.
constexpr length::Length coarse_step(length::Unit unit) {
    return in_unit(unit, length::thousandths(1), length::micrometres(50));
}

} // namespace make
