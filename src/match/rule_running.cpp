// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

using length::Length;
using length::Range;

namespace {

// How far the pilot is from the nearest hole it could be judged in, as a share of the size needed.
Shortfall pilot_shortfall(const Range& pilot, const CandidateHole& hole) {
    const Length largest = hole.pilots.sizes->hi;
    const Length smallest = hole.pilots.sizes->lo;
    if (pilot.lo > largest)
        return {(pilot.lo - largest).nm(), std::max<std::int64_t>(1, largest.nm())};
    if (pilot.hi < smallest)
        return {(smallest - pilot.hi).nm(), smallest.nm()};
    return {};
}

Shortfall least_shortfall(const Job& job, const Range& pilot) {
    std::optional<Shortfall> least;
    for (const auto& hole : job.holes) {
        const auto here = pilot_shortfall(pilot, hole);
        if (!least || here < *least)
            least = here;
    }
    return least.value_or(Shortfall{});
}

} // namespace

Finding judge_running(const Job& job, const Triple& triple) {
    Finding finding{Rule::running, Verdict::unknown, {}, false};
    const auto pilot = triple.pilot_dia();
    if (!triple.has_pilot()) {
        finding.verdict = Verdict::fail;
    } else if (!triple.hole) {
        finding.verdict = Verdict::fail;
        if (pilot)
            finding.shortfall = least_shortfall(job, *pilot);
    } else if (pilot) {
        const auto& running = triple.hole->running;
        finding.verdict = within(triple.hole->size - *pilot, running.least, running.most);
        if (finding.verdict == Verdict::fail)
            finding.shortfall = pilot_shortfall(*pilot, *triple.hole);
        // Nobody saw whether the pilot is in one piece with the body.
        if (finding.verdict == Verdict::pass && !triple.pilot &&
            triple.body->pilot_kind == trade::PilotKind::unknown)
            finding.verdict = Verdict::unknown;
    }
    return finding;
}

Explanation explain_running(const Job& job, const Triple& triple, const Records&,
                            length::Unit unit) {
    if (!triple.has_pilot())
        return {"a pilot in the hole", "no pilot"};
    const auto pilot = triple.pilot_dia();
    std::string have = "pilot " + say(pilot, unit);
    if (!triple.hole)
        return {"a pilot from " + say(job.shop->practice.running_least, unit) + " to " +
                    say(job.shop->practice.running_most, unit) + " under a drill for this screw",
                have + ": no drill on hand suits"};
    const auto& hole = *triple.hole;
    if (pilot)
        have += ", " + say(hole.size - *pilot, unit) + " under it";
    if (!triple.pilot && triple.body->pilot_kind == trade::PilotKind::unknown)
        have += "; not recorded whether the pilot is integral";
    const std::string what = hole.drill ? "the drill, " : "the hole, ";
    return {"pilot " + say(Range{hole.running.least, hole.running.most}, unit) + " under " + what +
                say(hole.size, unit),
            have};
}

} // namespace match
