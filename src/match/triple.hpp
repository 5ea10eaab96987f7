// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One body with one pilot (or its own, or none yet) and one hole: what the rules judge.
#pragma once

#include <optional>

#include "match/job.hpp"
#include "trade/body.hpp"
#include "trade/pilot.hpp"

namespace match {

struct Triple {
    const trade::Body* body = nullptr;
    const trade::Pilot* pilot = nullptr;      // absent: integral, none, or to be made
    const CandidateHole* hole = nullptr;      // absent: no drill suits
    std::optional<trade::Tried> tried;        // this pilot in this body
    const trade::Body* pilots_home = nullptr; // the body the pilot is in, this or another

    // The part that runs in the hole, where its diameter is known.
    [[nodiscard]] length::MaybeRange pilot_dia() const {
        if (pilot)
            return trade::range_of(pilot->pilot_dia);
        return trade::taken_as_integral(*body) ? trade::range_of(body->pilot_dia) : std::nullopt;
    }
    [[nodiscard]] length::MaybeRange pilot_length() const {
        if (pilot)
            return trade::range_of(pilot->pilot_length);
        return trade::taken_as_integral(*body) ? trade::range_of(body->pilot_length) : std::nullopt;
    }
    // A pilot is there, of whatever size.
    [[nodiscard]] bool has_pilot() const { return pilot || trade::taken_as_integral(*body); }
    // The pilot is still to be made or found.
    [[nodiscard]] bool lacks_pilot() const { return !pilot && trade::may_take_pilot(*body); }
};

} // namespace match
