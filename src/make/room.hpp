// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The room that a screw, a body and a hole leave for a pilot: the diameters that would run in the
// hole, and the shank diameters that would slip in the bore.
#pragma once

#include <memory>
#include <vector>

#include "make/list.hpp"
#include "match/job.hpp"
#include "match/tools.hpp"

namespace make {

// How closely a piece is turned and then measured (common practice: a careful hand on a small
// lathe). A piece needs at least so much room.
inline constexpr length::Length k_pilot_tolerance = length::thousandths(1);
inline constexpr length::Length k_shank_tolerance = length::inches_e5(40);

struct Room {
    int wish = 0; // whose screw
    const trade::Body* body = nullptr;
    const match::CandidateHole* hole = nullptr;
    match::SizeClass size = match::SizeClass::recommended;
    length::Range pilot;      // any diameter in it runs, however it is measured
    length::MaybeRange shank; // any in it slips; absent: to suit the body
};

// A wish with its job, which the rooms point into.
struct WishJob {
    const Wish* wish = nullptr;
    std::unique_ptr<match::Job> job;
};

// Every room of one wish: bodies that may take a pilot and by themselves pass every rule, with the
// holes in which they do. A bore larger than the hole is never among them.
[[nodiscard]] std::vector<Room> rooms_of(int index, const WishJob& wish, const match::Tools& tools);

} // namespace make
