// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The best triple of a body, over its pilots and the holes.
#pragma once

#include <optional>
#include <vector>

#include "match/order.hpp"
#include "match/tools.hpp"

namespace match {

// A pilot in a body, with where it is and how it was tried; no hole yet.
[[nodiscard]] Triple with_pilot(const Tools& tools, const trade::Body& body,
                                const trade::Pilot& pilot);

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
