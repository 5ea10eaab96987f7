// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A shortfall as a share of a need: two whole numbers of nanometres, compared without rounding.
#pragma once

#include <cstdint>

#include "length/length.hpp"

namespace oracle {

__extension__ using Wide = __int128;

// `of` is above zero.
struct Fraction {
    Wide over = 0;
    Wide of = 1;
};

inline bool less(const Fraction& a, const Fraction& b) {
    return a.over * b.of < b.over * a.of;
}

inline Fraction greater_of(const Fraction& a, const Fraction& b) {
    return less(a, b) ? b : a;
}

inline Fraction share(length::Length missing, length::Length need) {
    return {missing.nm(), need.nm()};
}

inline bool over_thousandths(const Fraction& fraction, std::int64_t thousandths) {
    return fraction.over * 1000 > fraction.of * thousandths;
}

} // namespace oracle
