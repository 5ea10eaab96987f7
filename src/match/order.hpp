// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The order of answers: total, so that the same catalogue always gives the same list.
#pragma once

#include <cstdint>

#include "match/judge.hpp"

namespace match {

// What the order goes by, first to last; the lesser comes first.
inline constexpr int k_no_hole_published = 5;

struct OrderKey {
    AnswerKind kind;
    Shortfall shortfall;    // of a closest; else 0
    int made;               // for this screw 0, for its published counterbore 1, else 2
    int published;          // drill: close, normal, loose, another, size on size, none
    int size;               // recommended, tool size, small, large, not known
    int seat;               // pilot in this body or integral, free, in another body
    std::int64_t closeness; // twice the clearance from the middle of good; unknown last
    int condition;          // the worse of body and pilot; not recorded counts as fair
    std::int64_t body;
    std::int64_t pilot; // none: 0
    std::int64_t drill; // nominal, nm
    int drill_kind;     // fraction, number, letter, metric
};

// `weighed.kind` must be set.
[[nodiscard]] OrderKey order_key(const Job& job, const Triple& triple, const Weighed& weighed);

[[nodiscard]] bool operator<(const OrderKey& a, const OrderKey& b);

// Published hole, seat and closeness in one number, which is ordered as they are.
using Rank = std::uint64_t;
inline constexpr Rank k_last_rank = UINT64_MAX;
[[nodiscard]] Rank rank_of(int published, int seat, std::int64_t closeness);
[[nodiscard]] Rank rank_of(const OrderKey& key);
// The first and the last rank with a hole published so.
[[nodiscard]] Rank first_rank(int published);
[[nodiscard]] Rank last_rank(int published);

[[nodiscard]] Made made_by_body(const Job& job, const trade::BodyFacts& body);
// What its key can have for `made` at the least.
[[nodiscard]] int least_made(Made made);

// Recommended 0 to large 3; not known 4.
[[nodiscard]] int size_rank(const Job& job, const trade::BodyFacts& body);

// In this body or integral 0, free or none 1, in another body 2.
[[nodiscard]] int seat_rank(Seat seat);

// How far the pilot is from the middle of good under the drill or in the hole, nm times two;
// unknown: the most.
[[nodiscard]] std::int64_t closeness_of(const Triple& triple);

// Of a condition that nobody recorded, fair is assumed.
[[nodiscard]] int condition_rank(const std::optional<trade::Condition>& condition);

[[nodiscard]] Seat seat_of(const Triple& triple);

// Size class of the triple's cutter; empty when it or the head is unknown, or it is too large.
[[nodiscard]] std::optional<SizeClass> size_of(const Job& job, const Triple& triple);

} // namespace match
