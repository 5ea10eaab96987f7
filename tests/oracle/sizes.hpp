// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What must go into the counterbore, how deep it must be, and what size of cutter the published
// tables would have there.
#pragma once

#include <optional>

#include "match/answer.hpp"
#include "match/question.hpp"

namespace oracle {

// The head, or the washer under it where that is larger.
[[nodiscard]] length::MaybeRange what_goes_in(const match::Question& question);

// Head and washer below the surface; a spotface for hex heads. Absent: a height is unknown.
[[nodiscard]] std::optional<length::Length> depth_to_cut(const match::Question& question,
                                                         const match::Shop& shop);

struct Targets {
    length::Length tool;
    length::Length published;
    length::Length limit; // a cutter over this is too large
};

// Absent when the head is unknown.
[[nodiscard]] std::optional<Targets> targets(const match::Question& question,
                                             const match::Shop& shop);

// Absent when the cutter or the head is unknown or the cutter is too large.
[[nodiscard]] std::optional<match::SizeClass> size_class(const match::Question& question,
                                                         const match::Shop& shop,
                                                         const length::MaybeRange& cut_dia);

[[nodiscard]] length::Length middle(const length::Range& range);

} // namespace oracle
