// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

using length::Length;
using length::Range;

namespace {

// How far the pilot is from the nearest hole it could be judged in, as a share of the size needed.
Shortfall pilot_shortfall(const Range& pilot, const CandidateHole& hole,
                          const trade::Practice& practice) {
    const Length largest = hole.hole.hi - practice.running_least;
    const Length smallest = hole.hole.lo - practice.running_most;
    if (pilot.lo > largest)
        return {(pilot.lo - largest).nm(), std::max<std::int64_t>(1, largest.nm())};
    if (pilot.hi < smallest)
        return {(smallest - pilot.hi).nm(), smallest.nm()};
    return {};
}

Shortfall least_shortfall(const Job& job, const Range& pilot) {
    std::optional<Shortfall> least;
    for (const auto& hole : job.holes) {
        const auto here = pilot_shortfall(pilot, hole, job.shop->practice);
        if (!least || here < *least)
            least = here;
    }
    return least.value_or(Shortfall{});
}

} // namespace

Finding judge_running(const Job& job, const Triple& triple) {
    Finding finding{Rule::running, Verdict::unknown, {}, false};
    const auto& practice = job.shop->practice;
    const auto pilot = triple.pilot_dia();
    if (!triple.has_pilot()) {
        finding.verdict = Verdict::fail;
    } else if (!triple.hole) {
        finding.verdict = Verdict::fail;
        if (pilot)
            finding.shortfall = least_shortfall(job, *pilot);
    } else if (pilot) {
        finding.verdict =
            within(triple.hole->hole - *pilot, practice.running_least, practice.running_most);
        if (finding.verdict == Verdict::fail)
            finding.shortfall = pilot_shortfall(*pilot, *triple.hole, practice);
        // Nobody saw whether the pilot is in one piece with the body.
        if (finding.verdict == Verdict::pass && !triple.pilot &&
            triple.body->pilot_kind == trade::PilotKind::unknown)
            finding.verdict = Verdict::unknown;
    }
    return finding;
}

Explanation explain_running(const Job& job, const Triple& triple, const Records&,
                            length::Unit unit) {
    const auto& practice = job.shop->practice;
    const std::string usable =
        "running clearance " + say(Range{practice.running_least, practice.running_most}, unit);
    if (!triple.has_pilot())
        return {"a pilot in the hole", "no pilot"};
    const auto pilot = triple.pilot_dia();
    std::string have = "pilot " + say(pilot, unit);
    if (!triple.hole)
        return {usable + ", in a hole for this screw", have + ": no drill on hand suits"};
    if (pilot)
        have = say(triple.hole->hole - *pilot, unit) + " (" + have + ")";
    if (!triple.pilot && triple.body->pilot_kind == trade::PilotKind::unknown)
        have += "; not recorded whether the pilot is integral";
    return {usable + ", hole " + say(triple.hole->hole, unit), have};
}

} // namespace match
