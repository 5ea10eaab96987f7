// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A triple with its rulings, the answer that they fold to, and what decides its place in the order.
#pragma once

#include <optional>
#include <vector>

#include "match/answer.hpp"
#include "oracle/rules.hpp"

namespace oracle {

struct Candidate {
    Triple triple;
    std::vector<Ruling> rulings;
    match::AnswerKind kind = match::AnswerKind::ready;
    Fraction shortfall; // of a closest
    std::optional<match::SizeClass> size;
    int seat = 0; // in this body or integral, free or none, in another body
    int made = 0; // for this screw, else 1
    HoleClass hole = HoleClass::none;
    std::optional<std::int64_t> closeness;
    int condition = 0; // of the worse of the two
};

// Absent: not listed.
[[nodiscard]] std::optional<Candidate> with_its_pilot(const Context& context, const Triple& triple);
[[nodiscard]] std::optional<Candidate> with_pilot_to_make(const Context& context,
                                                          const Triple& triple);

// Whether `a` comes before `b`: answer, shortfall if closest, made for the screw, hole, size class,
// seat of the pilot, closeness to good, condition, number of the body, of the pilot, then the
// drill.
[[nodiscard]] bool comes_before(const Candidate& a, const Candidate& b);

// Ready, after work or measure first.
[[nodiscard]] bool would_do(const Candidate& candidate);

} // namespace oracle
