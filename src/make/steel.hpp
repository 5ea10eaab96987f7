// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The steels that pilots are made of, and how each is hardened and drawn.
#pragma once

#include <span>
#include <string_view>

#include "length/length.hpp"

namespace make {

// Temperatures in degrees; for a hardness of 58 to 60 HRC.
struct Steel {
    std::string_view word; // as it is asked for: `O1`
    std::string_view name;
    int harden_f, harden_c;
    std::string_view quench;
    int draw_f, draw_c;
    std::string_view quench_caution;
    std::string_view source;
};

// The first is taken where none is named.
[[nodiscard]] std::span<const Steel> steels();
// Null for a word that names none. Case does not count.
[[nodiscard]] const Steel* steel_named(std::string_view word);

// How the new pilots of a list are made. Sleeves and turned-down pilots stay soft in any case.
struct Treatment {
    const Steel* steel = &steels().front();
    bool hardened = false;
};

// Left on both diameters for grinding (common practice: .005 to .010 in).
inline constexpr length::Length k_grind_least = length::thousandths(5);
inline constexpr length::Length k_grind_most = length::thousandths(10);

} // namespace make
