// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One body with one pilot (or its own, or none yet) and one hole: what the rules judge.
#pragma once

#include <optional>

#include "match/job.hpp"
#include "trade/facts.hpp"

namespace match {

struct Triple {
    const trade::BodyFacts* body = nullptr;
    const trade::PilotFacts* pilot = nullptr; // absent: integral, none, or to be made
    const CandidateHole* hole = nullptr;      // absent: no drill suits
    std::optional<trade::Tried> tried;        // this pilot in this body

    // The part that runs in the hole, where its diameter is known.
    [[nodiscard]] length::MaybeRange pilot_dia() const {
        if (pilot)
            return pilot->pilot_dia;
        return trade::taken_as_integral(*body) ? length::MaybeRange(body->pilot_dia) : std::nullopt;
    }
    [[nodiscard]] length::MaybeRange pilot_length() const {
        if (pilot)
            return pilot->pilot_length;
        return trade::taken_as_integral(*body) ? length::MaybeRange(body->pilot_length)
                                               : std::nullopt;
    }
    // A pilot is there, of whatever size.
    [[nodiscard]] bool has_pilot() const { return pilot || trade::taken_as_integral(*body); }
    [[nodiscard]] bool pilot_is_in_this_body() const {
        return pilot && pilot->in_body != 0 && pilot->in_body == body->number;
    }
    [[nodiscard]] bool pilot_is_in_another() const {
        return pilot && pilot->in_body != 0 && pilot->in_body != body->number;
    }
    // The pilot is still to be made or found.
    [[nodiscard]] bool lacks_pilot() const { return !pilot && trade::may_take_pilot(*body); }
};

// The records of a triple's tools: what is said of them beyond the facts.
struct Records {
    const trade::Body* body = nullptr;
    const trade::Pilot* pilot = nullptr; // as in the triple
    const trade::Body* home = nullptr;   // the body the pilot is in, this or another
};

} // namespace match
