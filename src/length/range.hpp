// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A closed range of lengths: what is known of a dimension.
#pragma once

#include <algorithm>
#include <optional>

#include "length/length.hpp"

namespace length {

// lo <= hi always; a single known value is lo == hi.
struct Range {
    Length lo;
    Length hi;

    constexpr bool operator==(const Range&) const = default;
};

using MaybeRange = std::optional<Range>;

constexpr Range exactly(Length value) {
    return {value, value};
}

constexpr Range spanning(Length a, Length b) {
    return {std::min(a, b), std::max(a, b)};
}

// Every difference a - b that the two ranges allow.
constexpr Range operator-(const Range& a, const Range& b) {
    return {a.lo - b.hi, a.hi - b.lo};
}
constexpr Range operator+(const Range& a, const Range& b) {
    return {a.lo + b.lo, a.hi + b.hi};
}
constexpr Range operator+(const Range& a, Length b) {
    return {a.lo + b, a.hi + b};
}

} // namespace length
