// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

using length::Length;
using length::Range;
using trade::Tried;

namespace {

// The flat and the set screw's point, measured along the shank from its free end.
struct Places {
    Range flat_at;
    Range flat_length;
    Range axis;        // of the set screw
    Length half_point; // of its point
};

std::optional<Places> places(const Job& job, const Triple& triple) {
    const auto& pilot = *triple.pilot;
    const auto& body = *triple.body;
    if (!pilot.flat_at || !pilot.flat_length || !pilot.shank_length)
        return std::nullopt;
    if (!body.set_screw_at || !body.set_screw)
        return std::nullopt;
    return Places{*pilot.flat_at, *pilot.flat_length, *pilot.shank_length - *body.set_screw_at,
                  half_point(job, body)};
}

// Does the flat cover the point for every value in the ranges, for none, or for some?
Verdict covers(const Places& at) {
    const Range along = at.axis - at.flat_at; // near end of the flat to the axis
    const Verdict near_end = at_least(along, at.half_point);
    const Verdict far_end = at_least(at.flat_length - along, at.half_point);
    const bool too_short = at.flat_length.hi < at.half_point * 2;
    return too_short ? Verdict::fail : worse(near_end, far_end);
}

bool must_be_filed(const Job& job, const Triple& triple) {
    if (triple.pilot->has_flat == false)
        return true;
    if (triple.tried == Tried::slides_and_holds)
        return false;
    const auto at = places(job, triple);
    return at && covers(*at) == Verdict::fail;
}

} // namespace

Length half_point(const Job& job, const trade::BodyFacts& body) {
    const Length major = (*body.set_screw).lo;
    return Length::from_nm(major.nm() * job.shop->practice.set_screw_point_share / 2000);
}

Finding judge_flat(const Job& job, const Triple& triple) {
    Finding finding{Rule::flat, Verdict::unknown, {}, must_be_filed(job, triple)};
    const bool set_screw = trade::holds_by(*triple.body).has_value();
    if (triple.tried == Tried::slides_and_holds || (set_screw && triple.pilot->has_flat == false)) {
        finding.verdict = Verdict::pass;
    } else if (set_screw) {
        const auto at = places(job, triple);
        // A flat that misses the screw is filed longer: work, not a failure.
        if (at && covers(*at) != Verdict::unknown)
            finding.verdict = Verdict::pass;
    }
    return finding;
}

Explanation explain_flat(const Job& job, const Triple& triple, const Records&, length::Unit unit) {
    Explanation explanation{"the flat covers the set screw's point", {}};
    if (triple.pilot->has_flat == false) {
        explanation.have = "the shank has no flat";
    } else if (triple.tried == Tried::slides_and_holds) {
        explanation.have = "tried: slides and holds";
    } else if (!trade::holds_by(*triple.body)) {
        explanation.have = "not recorded how the body holds its pilot";
    } else if (const auto at = places(job, triple)) {
        explanation.have = "flat at " + say(at->flat_at, unit) + ", " + say(at->flat_length, unit) +
                           " long; screw at " + say(at->axis, unit) + ", point " +
                           say(at->half_point * 2, unit) + "; from the end of the shank";
    } else {
        explanation.have = "flat or set screw not measured";
    }
    return explanation;
}

void add_flat_work(const Job& job, const Triple& triple, std::vector<std::string>& work) {
    if (!must_be_filed(job, triple))
        return;
    work.emplace_back(triple.pilot->has_flat == false ? "file a flat on the pilot shank"
                                                      : "file the flat longer, to the set screw");
}

} // namespace match
