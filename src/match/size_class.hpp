// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// How a cutter's size stands to the published counterbores of its screw.
#pragma once

#include <optional>
#include <string>

#include "match/answer.hpp"
#include "match/question.hpp"

namespace match {

// The sizes that a cutter is held against, for one head.
struct SizeTargets {
    length::Length tool;      // the handbook's tool for this screw
    length::Length published; // the recommended counterbore or spotface
    length::Length largest;   // beyond this a cutter is too large
    std::string source;       // of `published`
};

// `head` is the largest that must go in; `washer`, if not null, is the one whose it is.
[[nodiscard]] SizeTargets size_targets(const trade::Screw& screw, length::Length head,
                                       const Washer* washer, const trade::Practice& practice);

// Judged at the middle of the cutting diameter. Empty when it is larger than the largest.
[[nodiscard]] std::optional<SizeClass> size_class(const length::Range& cut_dia,
                                                  const SizeTargets& targets,
                                                  const trade::Practice& practice);

} // namespace match
