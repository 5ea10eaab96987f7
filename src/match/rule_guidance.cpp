// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

using length::Length;
using length::Range;

namespace {

// have >= need over all values of both.
Finding compared(const Range& have, const Range& need) {
    Finding finding{Rule::guidance, at_least(have - need, Length()), {}, false};
    if (finding.verdict == Verdict::fail)
        finding.shortfall = {(need.lo - have.hi).nm(), need.lo.nm()};
    return finding;
}

Finding harder(const Finding& a, const Finding& b) {
    Finding finding = a;
    finding.verdict = worse(a.verdict, b.verdict);
    finding.shortfall = std::max(a.shortfall, b.shortfall);
    return finding;
}

const Finding k_unknown{Rule::guidance, Verdict::unknown, {}, false};

// The part, or the hole in it, goes on below the cut.
Finding deeper_than_cut(const Range& deep, Length cut) {
    Finding finding{Rule::guidance, Verdict::unknown, {}, false};
    if (deep.lo > cut)
        finding.verdict = Verdict::pass;
    if (deep.hi <= cut) {
        finding.verdict = Verdict::fail;
        finding.shortfall = {(cut - deep.hi).nm(), cut.nm()};
    }
    return finding;
}

// Rounded up, so that a nanometre is not given away.
Length share_of(Length whole, std::int64_t thousandths) {
    return Length::from_nm((whole.nm() * thousandths + 999) / 1000);
}

Finding guided(const Job& job, const Triple& triple, const Range& thick) {
    if (!triple.has_pilot())
        return {Rule::guidance, Verdict::pass, {}, false};
    const auto pilot = triple.pilot_dia();
    const auto nose = assumes_pilot_length(job, triple) ? pilot : triple.pilot_length();
    if (!pilot)
        return k_unknown;
    const auto share = job.shop->practice.guidance_share;
    const Range need{share_of(pilot->lo, share), share_of(pilot->hi, share)};
    const Finding in_part = compared(thick, need);
    return harder(in_part, nose ? compared(*nose, need) : k_unknown);
}

Finding room_below(const Triple& triple, const Range& blind, Length depth) {
    const Finding below = deeper_than_cut(blind, depth);
    if (!triple.has_pilot())
        return below;
    const auto nose = triple.pilot_length();
    return harder(below, nose ? compared(blind + -depth, *nose) : k_unknown);
}

} // namespace

// A pilot whose length nobody recorded is taken to be one diameter long (common practice) where the
// part has room for that below the cut.
bool assumes_pilot_length(const Job& job, const Triple& triple) {
    const auto& thick = job.question->thick;
    const auto pilot = triple.pilot_dia();
    return thick && job.depth && pilot && !triple.pilot_length() &&
           thick->lo > *job.depth + pilot->hi;
}

Finding judge_guidance(const Job& job, const Triple& triple) {
    const auto& question = *job.question;
    Finding finding{Rule::guidance, job.depth ? Verdict::pass : Verdict::unknown, {}, false};
    if (question.thick) {
        if (job.depth)
            finding = harder(finding, deeper_than_cut(*question.thick, *job.depth));
        finding = harder(finding, guided(job, triple, *question.thick));
    }
    if (question.blind && job.depth)
        finding = harder(finding, room_below(triple, *question.blind, *job.depth));
    return finding;
}

Explanation explain_guidance(const Job& job, const Triple& triple, const Records&,
                             length::Unit unit) {
    const auto& question = *job.question;
    Explanation explanation;
    const auto depth = job.depth ? say(*job.depth, unit) : std::string("a depth not known");
    if (question.thick) {
        explanation.need =
            "part thicker than " + depth + ", half a pilot diameter in the hole first";
        explanation.have = "part " + say(*question.thick, unit);
    }
    if (question.blind) {
        if (!explanation.need.empty())
            explanation.need += "; ";
        explanation.need += "room for the pilot below " + depth;
        if (!explanation.have.empty())
            explanation.have += ", ";
        explanation.have += "hole " + say(*question.blind, unit) + " deep";
    }
    if (triple.has_pilot())
        explanation.have += ", pilot length " + say(triple.pilot_length(), unit);
    return explanation;
}

} // namespace match
