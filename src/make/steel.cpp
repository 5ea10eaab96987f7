// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/steel.hpp"

#include "trade/text.hpp"

namespace make {

namespace {

constexpr std::string_view k_oil =
    "Quench oil flares up: deep steel vessel, lid at hand, no water near; plunge the piece right "
    "under with long tongs.";
constexpr std::string_view k_water =
    "The quench spits and steams: long tongs, stand back. Steel not yet drawn may crack and fly.";

// Sources are public tables, named in docs/making-pilots.md with what each of them says.
constexpr Steel k_steels[]{
    {"O1", "drill rod O1 (oil-hardening, 1.2510)", 1475, 800, "oil", 500, 260, k_oil,
     "heat treating tables of a metals dealer and of a furnace maker for O1: harden 1450 to 1500 "
     "F, "
     "60 HRC drawn at 500 F, 57 at 600 F"},
    {"W1", "drill rod W1 (water-hardening, 1.1545)", 1450, 790, "brine or water", 550, 290, k_water,
     "heat treating table of a furnace maker for W1: harden 1400 to 1550 F, draw 350 to 650 F; "
     "a tool steel maker's table for W2: 62 HRC drawn at 500 F, 59 at 600 F"},
    {"silver", "silver steel (BS 1407, 115CrV3, 1.2210)", 1430, 775, "water", 480, 250, k_water,
     "a workshop page on silver steel: harden 770 to 780 C, quench in water; drawing temperature "
     "from memory"},
};

} // namespace

std::span<const Steel> steels() {
    return k_steels;
}

const Steel* steel_named(std::string_view word) {
    for (const auto& steel : k_steels)
        if (trade::folded(word) == trade::folded(steel.word))
            return &steel;
    return nullptr;
}

} // namespace make
