// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One thing to judge: a body, perhaps an owned pilot in it, and a hole.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "oracle/holes.hpp"
#include "trade/body.hpp"
#include "trade/pilot.hpp"

namespace oracle {

struct Context {
    const match::Question& question;
    const match::Shop& shop;
    const std::vector<trade::Body>& bodies;
    const std::vector<trade::Trial>& trials;
};

struct Triple {
    const trade::Body* body = nullptr;
    const trade::Pilot* pilot = nullptr; // none: integral, or no pilot at all
    HoleChoice hole;
};

// The part that runs in the hole, of the body itself or of the pilot in it.
struct Nose {
    length::MaybeRange dia;
    length::MaybeRange length;
};

[[nodiscard]] bool is_integral(const trade::Body& body);
[[nodiscard]] bool takes_pilots(const trade::Body& body);

// Absent: nothing runs in the hole.
[[nodiscard]] std::optional<Nose> nose_of(const Triple& triple);

// How this pilot went in this body, if a person has tried.
// How the body holds its pilots: as recorded, or by the set screw that is seen in it.
[[nodiscard]] std::optional<trade::Retention> holds_by(const trade::Body& body);
[[nodiscard]] bool holds_otherwise(const trade::Body& body); // surely not by a set screw

[[nodiscard]] std::optional<trade::Tried> tried(const Context& context, const Triple& triple);

} // namespace oracle
