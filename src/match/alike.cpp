// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/alike.hpp"

#include <algorithm>

#include "match/judge.hpp"
#include "match/rules.hpp"

namespace match {

namespace {

using length::exactly;
using length::Length;
using trade::BodyFacts;
using trade::BodyKind;

constexpr Length k_little = Length::from_nm(1);

// What the cutter must have over the head: between these, by the pilot.
struct Clearances {
    Length least;
    Length most;
};

// The cutter by what it comes to with every pilot; as it is where that hangs on the pilot.
trade::Limits cutter(const Job& job, const length::Range& cut, const Finding& head,
                     const Clearances& over_head) {
    const Length largest = job.sizes->largest;
    const Length enough = job.head->hi + over_head.most;
    const Length too_little = job.head->lo + over_head.least - k_little;
    if (head.verdict == Verdict::fail) {
        const bool large = cut.lo + cut.hi > largest * 2;
        const bool only_that = large ? largest >= enough : too_little <= largest;
        return only_that ? exactly(large ? largest + k_little : too_little) : cut;
    }
    if (cut.lo >= enough)
        return exactly(enough);
    const length::Range perhaps{too_little, job.head->lo + over_head.most};
    const bool always = cut.lo < job.head->hi + over_head.least && cut.hi >= perhaps.hi;
    return always && perhaps.hi <= largest ? perhaps : cut;
}

Finding put_head(const Job& job, const BodyFacts& body, const Extremes& pilots, Alike& same) {
    const Triple alone{&body, nullptr, nullptr, {}};
    const auto finding = judge_head(job, alone);
    if (!job.head || !body.cut_dia)
        return finding;
    const Length least = clearance_needed(job, alone);
    const bool whole = !trade::may_take_pilot(body);
    same.body.cut_dia = cutter(job, *body.cut_dia, finding,
                               {least, whole ? least : std::max(least, pilots.clearance)});
    return finding;
}

// No rule but that of depth looks at the kind and the reach.
Finding put_depth(const Job& job, const BodyFacts& body, Alike& same) {
    const auto finding = judge_depth(job, {&body, nullptr, nullptr, {}});
    if (finding.verdict == Verdict::fail)
        same.body.kind = BodyKind::other;
    if (!job.depth)
        return finding;
    same.body.reach = finding.verdict == Verdict::pass      ? trade::Limits(exactly(*job.depth))
                      : finding.verdict == Verdict::unknown ? body.reach
                                                            : exactly(*job.depth - k_little);
    return finding;
}

Finding put_use(const Job& job, const BodyFacts& body, Alike& same) {
    same.body.work_listed = needs_work(body);
    same.body.gone = is_out_of_use(body);
    return judge_in_hand(job, {&body, nullptr, nullptr, {}});
}

// What the rules look at of its pilot, or of what holds one.
void put_pilot(const Job& job, const BodyFacts& body, const Extremes& pilots, Alike& same) {
    same.body.pilot_kind = body.pilot_kind;
    if (trade::taken_as_integral(body)) {
        same.body.pilot_dia = body.pilot_dia;
        if (job.question->thick || job.question->blind)
            same.body.pilot_length = body.pilot_length;
    }
    if (!trade::may_take_pilot(body))
        return;
    same.body.bore = body.bore;
    if (same.fails)
        return; // no pilot will make up for it
    if (body.bore_depth && (*body.bore_depth).hi < pilots.shank_length)
        same.body.bore_depth = body.bore_depth;
    same.body.retention = body.retention;
    same.body.set_screw = body.set_screw;
    same.body.set_screw_at = body.set_screw_at;
}

std::size_t mixed(std::size_t hash, std::int64_t value) {
    constexpr std::size_t k_odd = 0x9E3779B97F4A7C15ULL;
    return (hash ^ static_cast<std::size_t>(value)) * k_odd ^ (hash >> 29);
}

} // namespace

std::optional<Alike> alike(const Job& job, const BodyFacts& body, const Extremes& pilots) {
    Alike same;
    const Triple alone{&body, nullptr, nullptr, {}};
    Scale scale(job, alone);
    scale.add(put_head(job, body, pilots, same));
    scale.add(put_depth(job, body, same));
    scale.add(put_use(job, body, same));
    if (job.question->machine) {
        scale.add(judge_spindle(job, alone));
        same.body.shank = body.shank;
        same.body.shank_dia = body.shank_dia;
    }
    const auto weighed = scale.weighed();
    if (!weighed.kind)
        return std::nullopt;
    same.shortfall = weighed.shortfall;
    same.fails = weighed.kind == AnswerKind::closest;
    put_pilot(job, body, pilots, same);
    return same;
}

// Of what is seldom the same; the rest decides by comparing.
std::size_t AlikeHash::operator()(const BodyFacts& body) const {
    std::size_t hash = static_cast<std::size_t>(body.kind) << 2 |
                       static_cast<std::size_t>(body.work_listed) << 1 |
                       static_cast<std::size_t>(body.gone);
    for (const auto& limits :
         {body.cut_dia, body.pilot_dia, body.bore, body.bore_depth, body.set_screw_at})
        hash =
            limits ? mixed(hash, ((*limits).lo.nm() << 32) ^ (*limits).hi.nm()) : mixed(hash, -1);
    return hash;
}

} // namespace match
