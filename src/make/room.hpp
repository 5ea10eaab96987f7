// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The room that a screw, a body and a hole leave for a pilot: the diameters that would run in the
// hole, and the shank diameters that would slip in the bore.
#pragma once

#include <algorithm>
#include <memory>
#include <vector>

#include "make/list.hpp"
#include "match/job.hpp"
#include "match/tools.hpp"

namespace make {

// How closely a piece is turned and then measured (common practice: a careful hand on a small
// lathe). A pilot has limits so far apart wherever its hole leaves the room, and closer ones, down
// to what can be ground, only where it does not.
inline constexpr length::Length k_pilot_tolerance = length::thousandths(1);
inline constexpr length::Length k_ground_tolerance = length::inches_e5(20);
inline constexpr length::Length k_shank_tolerance = length::inches_e5(40);

struct Room {
    int wish = 0; // whose screw
    const trade::Body* body = nullptr;
    const match::CandidateHole* hole = nullptr;
    match::SizeClass size = match::SizeClass::recommended;
    length::Range pilot;      // any diameter in it runs, however it is measured; on whole steps
    length::Range aim;        // of those, the limits of a piece for this room alone
    length::MaybeRange shank; // any in it slips; absent: to suit the body

    // A piece needs so much of `pilot`.
    [[nodiscard]] length::Length tolerance() const {
        return std::min(k_pilot_tolerance, pilot.hi - pilot.lo);
    }
};

// A wish with its job, which the rooms point into.
struct WishJob {
    const Wish* wish = nullptr;
    std::unique_ptr<match::Job> job;
};

// Every room of one wish: bodies that may take a pilot and by themselves pass every rule, with the
// holes in which they do. A bore larger than the hole is never among them. Limits are in whole
// divisions of a micrometer in `unit`.
[[nodiscard]] std::vector<Room> rooms_of(int index, const WishJob& wish, const match::Tools& tools,
                                         length::Unit unit);

} // namespace make
