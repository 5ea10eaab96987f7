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

} // namespace

length::MaybeRange pilot_to_make(const CandidateHole& hole) {
    const auto sized = [&hole](const trade::GoodClearance& under) -> length::MaybeRange {
        const auto smallest = hole.size.hi - under.most;
        const auto largest = hole.size.lo - under.least;
        return smallest > largest ? std::nullopt
                                  : length::MaybeRange(length::Range{smallest, largest});
    };
    const auto good = sized(hole.good);
    return good ? good : sized(hole.running); // absent: the hole is not known well enough
}

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
        wanted.reamed = hole->reamed;
        wanted.pilot = pilot_to_make(*hole);
    }
    wanted.depth = job.depth;
    return wanted;
}

} // namespace match
