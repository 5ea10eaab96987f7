// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The best triple of a body, over its pilots and the holes.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "match/order.hpp"

namespace match {

// The tools of a catalogue, found by number.
struct Tools {
    std::vector<trade::Body> bodies;
    std::vector<trade::Pilot> pilots;
    std::map<std::pair<std::int64_t, std::int64_t>, trade::Tried> tried; // by pilot, body

    [[nodiscard]] const trade::Body* body(std::int64_t number) const;
};

[[nodiscard]] Tools load_tools(const trade::Rack& rack);

struct Ranked {
    Judged judged;
    OrderKey key{};
};

struct BestOfBody {
    std::optional<Ranked> best; // absent: the body is not listed
    int other_pilots = 0;       // further ones that are ready, after work or measure first
};

// Each pilot of `pilots` with its best hole, and the body by itself; those that are listed.
[[nodiscard]] std::vector<Ranked> pairs_of(const Job& job, const Tools& tools,
                                           const std::vector<const trade::Pilot*>& pilots,
                                           const trade::Body& body);

[[nodiscard]] BestOfBody best_of(const Job& job, const Tools& tools,
                                 const std::vector<const trade::Pilot*>& pilots,
                                 const trade::Body& body);

} // namespace match
