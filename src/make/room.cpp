// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/room.hpp"

#include <algorithm>

#include "length/grid.hpp"
#include "make/fit.hpp"
#include "match/judge.hpp"
#include "match/order.hpp"
#include "match/wanted.hpp"

namespace make {

using length::Length;
using length::MaybeRange;
using length::Range;
using length::Unit;

namespace {

// Of the usual limits so much must be left for them to be kept to.
constexpr Length k_least_aim = length::inches_e5(40);

// Without a pilot yet, everything else about the body is known and passes.
bool passes_all(const match::Judged& judged) {
    return std::all_of(
        judged.findings.begin(),
        judged.findings.begin() + static_cast<std::ptrdiff_t>(judged.count),
        [](const match::Finding& finding) { return finding.verdict == match::Verdict::pass; });
}

// What is left inside [lo, hi] once the made size has been read with a micrometer, if it is enough.
MaybeRange inside(Length lo, Length hi, const match::Job& job, Length tolerance, Unit unit) {
    const Length reading = job.shop->practice.micrometer_within;
    const Range range = inward(Range{lo + reading, hi - reading}, fine_step(unit));
    if (range.hi - range.lo < tolerance)
        return std::nullopt;
    return range;
}

// Rule 2, and rule 1 where a pilot well under the screw would ask for a larger cutter.
MaybeRange pilot_room(const match::Job& job, const trade::Body& body,
                      const match::CandidateHole& hole, Unit unit) {
    Length least = hole.size.hi - hole.running.most;
    const Length cutter_over_head = body.cut_dia->range.lo - job.head->hi;
    if (job.question->hole.tapped)
        least = std::max(least, hole.hole.hi - cutter_over_head);
    else if (const auto& screw = job.question->screw.screw_dia)
        least = std::max(least, screw->hi - cutter_over_head);
    return inside(least, hole.size.lo - hole.running.least, job, k_ground_tolerance, unit);
}

// The usual limits where the room has enough of them, else what is nearest to them in it.
Range aim_in(const Range& room, const Range& usual, Unit unit) {
    const Range common{std::max(room.lo, usual.lo), std::min(room.hi, usual.hi)};
    const Range on_grid = inward(common, fine_step(unit));
    if (on_grid.hi - on_grid.lo >= k_least_aim)
        return on_grid;
    return around(middle(usual), k_pilot_tolerance, room, fine_step(unit));
}

// Rule 4.
MaybeRange shank_room(const match::Job& job, const trade::Body& body, Unit unit) {
    const Range& bore = body.bore->range;
    const auto& practice = job.shop->practice;
    return inside(bore.hi - practice.slip_most, bore.lo - practice.slip_least, job,
                  k_shank_tolerance, unit);
}

} // namespace

std::vector<Room> rooms_of(int index, const WishJob& wish, const match::Tools& tools, Unit unit) {
    std::vector<Room> rooms;
    const auto& job = *wish.job;
    for (const auto& body : tools.bodies) {
        if (!trade::may_take_pilot(body) || !body.bore)
            continue;
        const auto& facts = tools.facts(body);
        const auto shank = shank_room(job, body, unit);
        for (const auto& hole : job.holes) {
            const match::Triple triple{&facts, nullptr, &hole, {}};
            if (!passes_all(match::judge(job, triple)))
                continue;
            const auto size = match::size_of(job, triple);
            const auto pilot = pilot_room(job, body, hole, unit);
            if (!size || !pilot)
                continue;
            const auto aim =
                aim_in(*pilot, match::usual_pilot(hole, job.shop->practice, unit), unit);
            rooms.push_back({index, &body, &hole, *size, *pilot, aim, shank});
        }
    }
    return rooms;
}

} // namespace make
