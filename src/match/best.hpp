// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The best triple of a body, over its pilots and the holes, by trying each.
#pragma once

#include <optional>
#include <vector>

#include "match/order.hpp"
#include "match/tools.hpp"

namespace match {

inline constexpr std::size_t k_most_closest = 5; // that are spelled out

// A triple that is listed, with its place in the order.
struct Ranked {
    Triple triple;
    OrderKey key{};

    [[nodiscard]] AnswerKind kind() const { return key.kind; }
};

struct BestOfBody {
    std::optional<Ranked> best; // absent: the body is not listed
    int other_pilots = 0;       // further ones that are ready, after work or measure first
};

// A pilot in a body, with how it was tried; no hole yet.
[[nodiscard]] Triple with_pilot(const Tools& tools, const trade::BodyFacts& body,
                                const trade::PilotFacts& pilot);

// What the body by itself comes to, before any pilot or hole; these can only make it worse.
[[nodiscard]] std::optional<AnswerKind> alone(const Job& job, const trade::BodyFacts& body);

// A triple without a hole, with the best one. A pilot chooses among the holes that it can run in;
// where none suits, it has no hole.
[[nodiscard]] std::optional<Ranked> over_holes(const Job& job, Triple triple);

// As over_holes, for a body and a pilot; `at_best` is what the body comes to alone.
[[nodiscard]] std::optional<Ranked> pair_of(const Job& job, const Triple& triple,
                                            std::optional<AnswerKind> at_best);

[[nodiscard]] bool would_do(const Ranked& ranked);

using Pilots = std::vector<const trade::PilotFacts*>;

// Each pilot of `pilots` with its best hole, or a body that takes none by itself; those that are
// listed.
[[nodiscard]] std::vector<Ranked> pairs_of(const Job& job, const Tools& tools, const Pilots& pilots,
                                           const trade::BodyFacts& body);

[[nodiscard]] BestOfBody best_of(const Job& job, const Tools& tools, const Pilots& pilots,
                                 const trade::BodyFacts& body);

[[nodiscard]] Pilots all_pilots(const Tools& tools);

} // namespace match
