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
    Finding finding{Rule::slip, Verdict::unknown, {}, false};
    const auto& bore = triple.body->bore;
    const auto& shank = triple.pilot->shank_dia;
    const auto& practice = job.shop->practice;
    if (triple.tried) {
        finding = tried_finding(*triple.tried);
    } else if (bore && shank) {
        const Range slip = *bore - *shank;
        finding.verdict = within(slip, practice.slip_least, practice.slip_most);
        if (finding.verdict == Verdict::fail && triple.pilot_is_in_this_body())
            finding.verdict = Verdict::unknown;
        if (finding.verdict == Verdict::fail)
            finding.shortfall = {outside(slip, practice.slip_least, practice.slip_most).nm(),
                                 (*bore).lo.nm()};
    }
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
