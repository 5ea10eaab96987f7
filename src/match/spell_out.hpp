// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A judged triple as an answer, with its reasons in words.
#pragma once

#include "match/answer.hpp"
#include "match/judge.hpp"

namespace match {

inline constexpr std::size_t k_most_closest = 5; // that are spelled out

// `judged.kind` must be set.
[[nodiscard]] Answer spell_out(const Job& job, const Judged& judged, const Records& records,
                               length::Unit unit);

} // namespace match
