// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A counterbore or spotfacer, as found.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "trade/dimension.hpp"
#include "trade/words.hpp"

namespace trade {

// Empty text and absent values are unknown.
struct Body {
    std::int64_t number = 0;
    std::string set;
    BodyKind kind = BodyKind::unknown;
    MaybeDimension cut_dia;
    std::optional<std::int64_t> flutes;
    PilotKind pilot_kind = PilotKind::unknown;
    MaybeDimension pilot_dia;    // of an integral pilot
    MaybeDimension pilot_length; // of an integral pilot
    std::optional<bool> fluted;  // pilot fluted rather than plain
    MaybeDimension bore;         // takes a removable pilot's shank
    MaybeDimension bore_depth;
    std::optional<Retention> retention;
    std::string set_screw;       // size as recorded: `#8-32`, `M5`
    MaybeDimension set_screw_at; // mouth of the bore to the screw's axis
    MaybeDimension reach;        // usable length
    MaybeDimension shank_dia;
    std::string shank_kind; // straight, Morse 2, ...
    std::string material;
    std::optional<Condition> condition;
    std::vector<std::string> work; // needed before use
    std::string marking;
    std::string place;
    std::string note;
    std::optional<std::string> retired; // why
    std::optional<std::string> loan;    // who has it

    bool operator==(const Body&) const = default;
};

// A body with no recorded kind of pilot is taken as integral if a pilot diameter is known, else as
// one that may take a removable pilot.
[[nodiscard]] inline bool taken_as_integral(const Body& body) {
    return body.pilot_kind == PilotKind::integral ||
           (body.pilot_kind == PilotKind::unknown && body.pilot_dia.has_value());
}
[[nodiscard]] inline bool may_take_pilot(const Body& body) {
    return body.pilot_kind == PilotKind::removable ||
           (body.pilot_kind == PilotKind::unknown && !body.pilot_dia.has_value());
}

} // namespace trade
