// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <algorithm>

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

using length::Length;
using length::Range;

namespace {

Length largest_hole(const Job& job) {
    return Length::from_nm(job.head->lo.nm() * job.shop->practice.seat_share / 1000);
}

// Too small for the head, too large for its tables, or a hole that leaves no seat.
struct Parts {
    Verdict goes_in = Verdict::unknown;
    bool too_large = false;
    bool no_seat = false;
};

Parts judge_parts(const Job& job, const Triple& triple) {
    Parts parts;
    if (!job.head)
        return parts;
    parts.no_seat = triple.hole && !leaves_seat(job, *triple.hole);
    if (!triple.body->cut_dia)
        return parts;
    const Range cut = *triple.body->cut_dia;
    parts.goes_in = at_least(cut - *job.head, clearance_needed(job, triple));
    parts.too_large = cut.lo + cut.hi > job.sizes->largest * 2;
    return parts;
}

Shortfall worst_shortfall(const Job& job, const Triple& triple, const Parts& parts) {
    Shortfall worst;
    const auto consider = [&worst](Length missing, Length needed) {
        worst = std::max(worst, Shortfall{missing.nm(), needed.nm()});
    };
    if (parts.goes_in == Verdict::fail) {
        const Length needed = job.head->lo + clearance_needed(job, triple);
        consider(needed - (*triple.body->cut_dia).hi, needed);
    }
    if (parts.too_large) {
        const Range cut = *triple.body->cut_dia;
        const Length twice = job.sizes->largest * 2;
        consider(cut.lo + cut.hi - twice, twice);
    }
    if (parts.no_seat)
        consider(triple.hole->hole.hi - largest_hole(job), largest_hole(job));
    return worst;
}

std::string head_that_would_do(const Job& job, const Triple& triple, length::Unit unit) {
    const Length largest = (*triple.body->cut_dia).lo - clearance_needed(job, triple);
    const auto& screw = job.question->screw;
    const char* what = screw.head_measured ? "this head may be " : "heads of this series run ";
    if (job.head != screw.head_dia) // the washer is the larger
        what = "head and washer run ";
    return what + say(*job.head, unit) + "; this cutter needs " + say(largest, unit) +
           " or less: measure yours";
}

} // namespace

// The cutter may sit off by half its running clearance, so a pilot well under the screw asks for
// more. A hole for the tap is larger than its screw's thread leaves free: there the cutter sits off
// by its play in the hole, while the thread centres the screw.
Length clearance_needed(const Job& job, const Triple& triple) {
    const auto pilot = triple.pilot_dia();
    const auto& screw = job.question->screw.screw_dia;
    const Length usual = job.shop->practice.head_clearance;
    if (!pilot)
        return usual;
    if (job.question->hole.tapped)
        return std::max(usual, job.holes.front().hole.hi - pilot->lo);
    return screw ? std::max(usual, screw->hi - pilot->lo) : usual;
}

bool leaves_seat(const Job& job, const CandidateHole& hole) {
    return !job.head || hole.hole.hi <= largest_hole(job);
}

Finding judge_head(const Job& job, const Triple& triple) {
    const Parts parts = judge_parts(job, triple);
    Finding finding{Rule::head, parts.goes_in, {}, false};
    if (parts.too_large || parts.no_seat)
        finding.verdict = Verdict::fail;
    if (finding.verdict == Verdict::fail)
        finding.shortfall = worst_shortfall(job, triple, parts);
    return finding;
}

Explanation explain_head(const Job& job, const Triple& triple, const Records&, length::Unit unit) {
    const length::MaybeRange cut = triple.body->cut_dia;
    if (!job.head)
        return {"a head of known diameter", "cutter " + say(cut, unit)};
    const Parts parts = judge_parts(job, triple);
    const Length clearance = clearance_needed(job, triple);
    if (parts.no_seat)
        return {"hole " + say(largest_hole(job), unit) + " or less, to leave the head a seat",
                "hole " + say(triple.hole->hole, unit)};
    if (parts.too_large)
        return {"cutter " + say(job.sizes->largest, unit) + " or less (" + job.sizes->source +
                    " has " + say(job.sizes->published, unit) + ")",
                "cutter " + say(cut, unit)};
    if (cut && parts.goes_in == Verdict::unknown)
        return {head_that_would_do(job, triple, unit), "cutter " + say(cut, unit)};
    return {"cutter " + say(job.head->hi + clearance, unit) + " or more, " + say(clearance, unit) +
                " over the head " + say(*job.head, unit),
            "cutter " + say(cut, unit)};
}

} // namespace match
