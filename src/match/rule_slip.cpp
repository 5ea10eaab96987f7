// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

using length::Range;
using trade::Tried;

namespace {

Finding tried_finding(Tried tried) {
    const bool fails = tried == Tried::loose || tried == Tried::will_not_go;
    return {Rule::slip, fails ? Verdict::fail : Verdict::pass, {}, tried == Tried::binds};
}

// By a thread, a pin, a detent: whether this pilot is held so shows only when it is tried.
bool held_otherwise(const Triple& triple) {
    const auto by = trade::holds_by(*triple.body);
    return by && *by != trade::Retention::set_screw;
}

// A pilot with a flat is one for a set screw.
bool unlike(const Triple& triple) {
    return held_otherwise(triple) && triple.pilot->has_flat == true && !triple.tried &&
           !triple.pilot_is_in_this_body();
}

bool holding_is_open(const Triple& triple) {
    return held_otherwise(triple) && triple.tried != Tried::slides_and_holds;
}

Finding measured_finding(const Triple& triple, const trade::Practice& practice) {
    Finding finding{Rule::slip, Verdict::unknown, {}, false};
    const auto& bore = triple.body->bore;
    const auto& shank = triple.pilot->shank_dia;
    if (!bore || !shank)
        return finding;
    const Range slip = *bore - *shank;
    finding.verdict = within(slip, practice.slip_least, practice.slip_most);
    if (finding.verdict == Verdict::fail && triple.pilot_is_in_this_body())
        finding.verdict = Verdict::unknown;
    if (finding.verdict == Verdict::fail)
        finding.shortfall = {outside(slip, practice.slip_least, practice.slip_most).nm(),
                             (*bore).lo.nm()};
    return finding;
}

bool shank_too_long(const Triple& triple) {
    const auto& shank = triple.pilot->shank_length;
    const auto& bore = triple.body->bore_depth;
    return shank && bore && (*shank).lo > (*bore).hi;
}

// A pilot that slid in has shown that its shank is not too long.
bool needs_shortening(const Triple& triple) {
    const bool slid = triple.tried &&
                      (*triple.tried == Tried::slides || *triple.tried == Tried::slides_and_holds);
    return !slid && shank_too_long(triple);
}

} // namespace

Finding judge_slip(const Job& job, const Triple& triple) {
    if (unlike(triple)) // no pair, near or far
        return {Rule::slip, Verdict::fail, {1, 1}, false};
    Finding finding =
        triple.tried ? tried_finding(*triple.tried) : measured_finding(triple, job.shop->practice);
    if (finding.verdict == Verdict::pass && holding_is_open(triple))
        finding.verdict = Verdict::unknown;
    finding.work = finding.work || needs_shortening(triple);
    return finding;
}

Explanation explain_slip(const Job& job, const Triple& triple, const Records&, length::Unit unit) {
    const auto& bore = triple.body->bore;
    const auto& shank = triple.pilot->shank_dia;
    const auto& practice = job.shop->practice;
    Explanation explanation{"slip " + say(Range{practice.slip_least, practice.slip_most}, unit),
                            {}};
    explanation.have = bore && shank ? say(*bore - *shank, unit)
                                     : "bore " + say(bore, unit) + ", shank " + say(shank, unit);
    if (triple.tried)
        explanation.have = "tried: " + std::string(trade::to_text(*triple.tried));
    else if (triple.pilot_is_in_this_body())
        explanation.have += "; found in this body, not tried";
    if (unlike(triple))
        explanation.have += "; the pilot has a flat, the body holds by " +
                            std::string(trade::to_text(*triple.body->retention));
    else if (holding_is_open(triple))
        explanation.have += "; not tried whether it holds by " +
                            std::string(trade::to_text(*triple.body->retention));
    if (needs_shortening(triple))
        explanation.have +=
            "; shank " + say(triple.pilot->shank_length, unit) + " longer than the bore";
    return explanation;
}

void add_slip_work(const Triple& triple, std::vector<std::string>& work) {
    if (triple.tried == Tried::binds)
        work.emplace_back("clean the bore or polish the pilot shank");
    if (needs_shortening(triple))
        work.emplace_back("shorten the pilot shank to the bore");
}

} // namespace match
