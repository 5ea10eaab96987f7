// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The question worked out once, before any tool is looked at: the head that must go in, the sizes
// that counterbores are held against, the depth, and the holes that come into question.
#pragma once

#include <optional>
#include <vector>

#include "match/made_for.hpp"
#include "match/question.hpp"
#include "match/size_class.hpp"
#include "trade/rack.hpp"

namespace match {

// Which of the screw's published holes a drill makes, or that it leaves the screw no play; the
// order is the order of preference.
enum class Published { close, normal, loose, other, size_on_size };

struct CandidateHole {
    std::optional<trade::Drill> drill; // absent: the hole is there already
    length::Range hole;                // as it may come out
    length::Range size; // what is relied on: the drill's own size, or the hole as it is known
    Published published = Published::other;
    bool reamed = false;          // for a shoulder
    trade::GoodClearance running; // size over pilot: what may run
    trade::GoodClearance good;    // what runs well
    trade::Window pilots;         // that may run in it
};

struct Job {
    const Question* question;
    const Shop* shop;
    length::MaybeRange head;             // with the washer, where that is larger
    std::optional<SizeTargets> sizes;    // absent: head unknown
    std::optional<length::Length> depth; // to cut; absent: head height or washer unknown
    std::vector<CandidateHole> holes;    // in the order equal holes are taken
    MadeFor made;
};

// `question` and `shop` must outlive the job. `marked`: the bodies whose marking names the screw.
[[nodiscard]] Job make_job(const Question& question, const Shop& shop,
                           trade::NumberSet marked = {});

// The hole a drill leaves: from its own size to the most that drills cut over it.
[[nodiscard]] CandidateHole drilled_hole(const trade::Drill& drill, const trade::Screw& screw,
                                         const Shop& shop);

// The largest drill that a chosen hole may have: the published loose one, or by rule of thumb.
[[nodiscard]] std::optional<length::Length> loosest(const trade::Screw& screw,
                                                    const trade::Practice& practice);

} // namespace match
