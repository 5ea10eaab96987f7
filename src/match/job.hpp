// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The question worked out once, before any tool is looked at: the head that must go in, the sizes
// that counterbores are held against, the depth, and the holes that come into question.
#pragma once

#include <optional>
#include <vector>

#include "match/question.hpp"
#include "match/size_class.hpp"
#include "trade/rack.hpp"

namespace match {

// Which of the screw's published holes a drill makes; the order is the order of preference.
enum class Published { close, normal, loose, other };

struct CandidateHole {
    std::optional<trade::Drill> drill; // absent: the hole is there already
    length::Range hole;
    length::Length twice_mean; // of the hole as it comes out on average
    Published published = Published::other;
    trade::GoodClearance good; // running clearance that is good in it
    trade::Window running;     // pilots that may run in it
};

struct Job {
    const Question* question;
    const Shop* shop;
    length::MaybeRange head;             // with the washer, where that is larger
    std::optional<SizeTargets> sizes;    // absent: head unknown
    std::optional<length::Length> depth; // to cut; absent: head height or washer unknown
    std::vector<CandidateHole> holes;    // in the order equal holes are taken
};

// `question` and `shop` must outlive the job.
[[nodiscard]] Job make_job(const Question& question, const Shop& shop);

// The hole a drill leaves: nominal plus the average oversize.
[[nodiscard]] CandidateHole drilled_hole(const trade::Drill& drill, const trade::Screw& screw,
                                         const Shop& shop);

// The largest drill that a chosen hole may have: the published loose one, or by rule of thumb.
[[nodiscard]] std::optional<length::Length> loosest(const trade::Screw& screw,
                                                    const trade::Practice& practice);

} // namespace match
