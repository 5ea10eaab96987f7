// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Every body of a rack that can matter to a job, seen once: all counted by answer, and the first of
// them in the order of answers kept.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "match/best.hpp"
#include "match/trials.hpp"

namespace match {

struct Found {
    trade::BodyFacts body;
    std::optional<trade::PilotFacts> pilot;
    Ranked ranked; // its triple points into this
    int other_pilots = 0;

    // Points the triple at this body and pilot.
    void settle();
};

struct Findings {
    std::vector<Found> first;                          // at most as many as asked for, in order
    std::array<std::int64_t, k_answer_kinds> counts{}; // bodies by answer
};

class KeptRunners;

// `most` 0: all.
[[nodiscard]] Findings search(const Job& job, KeptRunners& kept, std::size_t most);
// For one question.
[[nodiscard]] Findings search(const Job& job, const trade::Rack& rack, const Trials& trials,
                              std::size_t most);

} // namespace match
