// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/wanted.hpp"

#include <algorithm>

#include "trade/tolerance.hpp"

namespace match {

using length::Range;

namespace {

// Published close, normal, loose, then the smallest. For a screw that nobody knows the diameter of
// no drill is wanted rather than another.
const CandidateHole* preferred_hole(const Job& job) {
    if (!job.question->screw.screw_dia && job.question->hole.kind == HoleKind::chosen)
        return nullptr;
    const auto better = [](const CandidateHole& a, const CandidateHole& b) {
        return a.published < b.published;
    };
    const auto it = std::min_element(job.holes.begin(), job.holes.end(), better);
    return it == job.holes.end() ? nullptr : &*it;
}

} // namespace

Range usual_pilot(const CandidateHole& hole, const trade::Practice& practice, length::Unit unit) {
    const auto least = hole.size.lo;
    const bool metric = hole.drill ? hole.drill->kind == trade::DrillKind::metric
                                   : unit == length::Unit::millimetre;
    if (metric)
        return trade::e8_limits(least);
    return {least - practice.pilot_under_most, least - practice.pilot_under_least};
}

length::MaybeRange pilot_to_make(const CandidateHole& hole, const trade::Practice& practice,
                                 length::Unit unit) {
    const Range runs{hole.size.hi - hole.running.most, hole.size.lo - hole.running.least};
    if (runs.lo > runs.hi)
        return std::nullopt; // the hole is not known well enough
    const auto usual = usual_pilot(hole, practice, unit);
    return runs.lo <= usual.lo && usual.hi <= runs.hi ? usual : runs;
}

Wanted wanted_for(const Job& job, length::Unit unit) {
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
        wanted.pilot = pilot_to_make(*hole, practice, unit);
    }
    wanted.depth = job.depth;
    return wanted;
}

} // namespace match
