// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/room.hpp"

#include <algorithm>

#include "match/judge.hpp"
#include "match/order.hpp"

namespace make {

using length::Length;
using length::MaybeRange;
using length::Range;

namespace {

// Without a pilot yet, everything else about the body is known and passes.
bool passes_all(const match::Judged& judged) {
    return std::all_of(
        judged.findings.begin(),
        judged.findings.begin() + static_cast<std::ptrdiff_t>(judged.count),
        [](const match::Finding& finding) { return finding.verdict == match::Verdict::pass; });
}

// Room inside [lo, hi] once the made size has been read with a micrometer, if enough is left.
MaybeRange inside(Length lo, Length hi, Length reading, Length tolerance) {
    const Range range{lo + reading, hi - reading};
    if (range.hi - range.lo < tolerance)
        return std::nullopt;
    return range;
}

// Rule 2, and rule 1 where a pilot well under the screw would ask for a larger cutter.
MaybeRange pilot_room(const match::Job& job, const trade::Body& body,
                      const match::CandidateHole& hole) {
    const auto& practice = job.shop->practice;
    Length least = hole.size.hi - hole.running.most;
    if (const auto& screw = job.question->screw.screw_dia)
        least = std::max(least, screw->hi - (body.cut_dia->range.lo - job.head->hi));
    return inside(least, hole.size.lo - hole.running.least, practice.micrometer_within,
                  k_pilot_tolerance);
}

// Rule 4.
MaybeRange shank_room(const trade::Body& body, const trade::Practice& practice) {
    const Range& bore = body.bore->range;
    return inside(bore.hi - practice.slip_most, bore.lo - practice.slip_least,
                  practice.micrometer_within, k_shank_tolerance);
}

} // namespace

std::vector<Room> rooms_of(int index, const WishJob& wish, const match::Tools& tools) {
    std::vector<Room> rooms;
    const auto& job = *wish.job;
    for (const auto& body : tools.bodies) {
        if (!trade::may_take_pilot(body) || !body.bore)
            continue;
        const auto& facts = tools.facts(body);
        const auto shank = shank_room(body, job.shop->practice);
        for (const auto& hole : job.holes) {
            const match::Triple triple{&facts, nullptr, &hole, {}};
            if (!passes_all(match::judge(job, triple)))
                continue;
            const auto size = match::size_of(job, triple);
            const auto pilot = pilot_room(job, body, hole);
            if (size && pilot)
                rooms.push_back({index, &body, &hole, *size, *pilot, shank});
        }
    }
    return rooms;
}

} // namespace make
