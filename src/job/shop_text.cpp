// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/shop_text.hpp"

#include "length/print.hpp"

namespace job {

using length::Length;
using length::Range;
using length::Unit;

std::string shop_text(Length value, Unit unit, Grain grain) {
    if (unit == Unit::inch)
        return length::to_text(value, unit, 3);
    return length::to_text(value, unit, grain == Grain::close ? 2 : 1);
}

std::string shop_text(const Range& range, Unit unit, Grain grain) {
    const auto lo = shop_text(range.lo, unit, grain);
    const auto hi = shop_text(range.hi, unit, grain);
    return lo == hi ? lo : lo + " to " + hi;
}

std::string nearest_fraction(Length value) {
    const auto step = length::sixty_fourths(1).nm();
    const auto count = (value.nm() + step / 2) / step;
    return count > 0 ? length::as_fraction(length::sixty_fourths(count)) : std::string();
}

} // namespace job
