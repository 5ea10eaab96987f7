// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The pilot that the trade makes for a hole, before what the piece has to share is looked at.
#pragma once

#include "match/job.hpp"

namespace make {

// .002 to .004 in under the drill, or under the least limit of a hole that is there or reamed
// (practice table). Under a metric drill, or in a hole measured in `unit` millimetres, e8 of ISO
// 286-2, to which DIN 373 has its pilots.
[[nodiscard]] length::Range usual_pilot(const match::CandidateHole& hole,
                                        const trade::Practice& practice, length::Unit unit);

// As wide as `tolerance` or as `limits` are, around `aim` moved as little as `limits` ask; ends on
// whole steps if those of `limits` are.
[[nodiscard]] length::Range around(length::Length aim, length::Length tolerance,
                                   const length::Range& limits, length::Length step);

} // namespace make
