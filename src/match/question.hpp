// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is asked: a screw, the hole it goes through, and the circumstances.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "trade/machine.hpp"
#include "trade/rack.hpp"
#include "trade/screw.hpp"

namespace match {

enum class HoleKind { chosen, drilled, measured };

// The hole: left to the pilot, made by a named drill, or there already.
struct Hole {
    HoleKind kind = HoleKind::chosen;
    std::string text;       // as asked: `close`, `tap`, `F`, `.332 +-.001`
    trade::Drill drill;     // when drilled
    length::Range measured; // when measured
    bool tapped = false;    // `tap`: the screw is not asked to pass
};

struct Washer {
    std::string name;
    length::Range outside_dia;
    length::MaybeRange thickness;
};

struct Question {
    trade::Screw screw;
    Hole hole;
    std::optional<Washer> washer;
    std::optional<length::Length> below; // head below the surface; absent: as usual
    length::MaybeRange thick;            // the part is so thick: a through hole
    length::MaybeRange blind;            // the hole is so deep, from the surface
    std::optional<trade::Machine> machine;
    std::string set; // only tools of this set; empty: all
};

// What the shop has and does, apart from its tools.
struct Shop {
    trade::Practice practice;
    std::vector<trade::Drill> drills; // owned: by diameter, then kind
    std::vector<trade::Oversize> oversize;
    std::vector<trade::DrilledHole> drilled_holes;
};

// How far below the surface the head goes: as asked, or what the standard of its counterbore adds
// to the head (DIN 974-1), or the shop's practice.
[[nodiscard]] length::Length below_surface(const Question& question,
                                           const trade::Practice& practice);

// The drills of the indexes the shop owns: those named in practice, else fraction, number and
// letter in an inch catalogue, metric in a metric one.
[[nodiscard]] Shop make_shop(const trade::Tables& tables, trade::Practice practice,
                             length::Unit unit);

// Reads `close`, `normal`, `loose`, `tap`, a drill's name, or a measured size with or without
// limits (calipered). A name in a drill index is a drill. Throws error::BadData.
[[nodiscard]] Hole parse_hole(std::string_view text, const trade::Screw& screw,
                              const trade::Tables& tables, const trade::Practice& practice,
                              length::Unit unit);

// Reads a washer series of the screw's size (`plain-sae`, `ISO 7089`), or an outside diameter with
// or without thickness (`5/8`, `5/8 x 1/16`), calipered. Throws error::BadData.
[[nodiscard]] Washer parse_washer(std::string_view text, const trade::Screw& screw,
                                  const trade::Tables& tables, const trade::Practice& practice,
                                  length::Unit unit);

} // namespace match
