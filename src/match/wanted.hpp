// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tool that a job wants, from the rules alone.
#pragma once

#include "match/answer.hpp"
#include "match/job.hpp"

namespace match {

// Holes that are there already are measured in `unit`.
[[nodiscard]] Wanted wanted_for(const Job& job, length::Unit unit);

// The pilot that is usually made for a hole: .002 to .004 in under the drill, or under the least
// limit of the hole; metric e8 of ISO 286-2.
[[nodiscard]] length::Range usual_pilot(const CandidateHole& hole, const trade::Practice& practice,
                                        length::Unit unit);

// That, or in a hole not known well enough for it what surely runs; absent: none does.
[[nodiscard]] length::MaybeRange pilot_to_make(const CandidateHole& hole,
                                               const trade::Practice& practice, length::Unit unit);

} // namespace match
