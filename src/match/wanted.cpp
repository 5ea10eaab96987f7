// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/wanted.hpp"

#include <algorithm>

namespace match {

namespace {

// Published close, normal, loose, then the smallest.
const CandidateHole* preferred_hole(const Job& job) {
    const auto better = [](const CandidateHole& a, const CandidateHole& b) {
        return a.published < b.published;
    };
    const auto it = std::min_element(job.holes.begin(), job.holes.end(), better);
    return it == job.holes.end() ? nullptr : &*it;
}

length::MaybeRange pilot_for(const length::Range& hole, const trade::Practice& practice) {
    const auto smallest = hole.hi - practice.running_most;
    const auto largest = hole.lo - practice.running_least;
    if (smallest > largest)
        return std::nullopt; // the hole is not known well enough
    return length::Range{smallest, largest};
}

} // namespace

Wanted wanted_for(const Job& job) {
    const auto& practice = job.shop->practice;
    Wanted wanted;
    if (job.head) {
        wanted.cutter =
            length::spanning(job.head->hi + practice.head_clearance, job.sizes->largest);
        wanted.published = job.sizes->published;
        wanted.published_source = job.sizes->source;
    }
    if (const auto* hole = preferred_hole(job)) {
        wanted.drill = hole->drill;
        wanted.hole = hole->hole;
        wanted.pilot = pilot_for(hole->hole, practice);
    }
    wanted.depth = job.depth;
    return wanted;
}

} // namespace match
