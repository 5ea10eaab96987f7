// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tool that a job wants, from the rules alone.
#pragma once

#include "match/answer.hpp"
#include "match/job.hpp"

namespace match {

[[nodiscard]] Wanted wanted_for(const Job& job);

// The pilot that runs well in a hole; in one not known well enough for that, what may run; absent:
// none surely does.
[[nodiscard]] length::MaybeRange pilot_to_make(const CandidateHole& hole);

} // namespace match
