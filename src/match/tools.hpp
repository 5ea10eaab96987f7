// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tools of a catalogue in memory with all that is recorded of them, for questions about each
// body with each pilot.
#pragma once

#include <cstdint>
#include <map>
#include <utility>
#include <vector>

#include "match/answer.hpp"
#include "match/triple.hpp"
#include "trade/rack.hpp"

namespace match {

struct Tools {
    std::vector<trade::Body> bodies;                                     // by number
    std::vector<trade::Pilot> pilots;                                    // by number
    std::map<std::pair<std::int64_t, std::int64_t>, trade::Tried> tried; // by pilot, body
    std::vector<trade::BodyFacts> body_facts;                            // of each body
    std::vector<trade::PilotFacts> pilot_facts;                          // of each pilot

    // nullptr when there is none.
    [[nodiscard]] const trade::Body* body(std::int64_t number) const;
    [[nodiscard]] const trade::Pilot* pilot(std::int64_t number) const;

    // Of a body or pilot of these.
    [[nodiscard]] const trade::BodyFacts& facts(const trade::Body& body) const;
    [[nodiscard]] const trade::PilotFacts& facts(const trade::Pilot& pilot) const;

    // The records of a triple of these facts.
    [[nodiscard]] Records records(const Triple& triple) const;
};

// Bodies and pilots by number.
[[nodiscard]] Tools make_tools(std::vector<trade::Body> bodies, std::vector<trade::Pilot> pilots,
                               const std::vector<trade::Trial>& trials);

[[nodiscard]] Tools load_tools(const trade::Rack& rack);

// Every body with every pilot, each judged with its best hole: those that are listed, in order.
// At most `most` are spelled out, 0 for all; counts are of pairs.
[[nodiscard]] Report match_pairs(const Question& question, const Shop& shop, const Tools& tools,
                                 length::Unit unit, std::size_t most);

} // namespace match
