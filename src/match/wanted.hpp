// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tool that a job wants, from the rules alone.
#pragma once

#include "match/answer.hpp"
#include "match/job.hpp"

namespace match {

[[nodiscard]] Wanted wanted_for(const Job& job);

} // namespace match
