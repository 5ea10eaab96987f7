// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The question cut down to what hand-written SQL can be asked as well: the head goes in and the
// cutter is not too large, the pilot runs in a hole, a removable one slips in the bore, the bore is
// not larger than the hole, everything is in hand. No trials, depth, flats, work or order of
// preference beyond size and closeness. These are its figures for each screw, in nanometres.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "match/job.hpp"
#include "store/file.hpp"

namespace speed {

struct AskedHole {
    std::string name;
    std::int64_t lo = 0, hi = 0;                      // of the drill, or as it is known
    std::int64_t running_least = 0, running_most = 0; // that a pilot may be under it
    std::int64_t twice_best = 0; // twice the diameter of the pilot that is closest to good
};

struct Asked {
    std::int64_t id = 0; // 0: the one screw; from 1: the house list
    std::string name;
    std::int64_t head_lo = 0, head_hi = 0;
    std::int64_t screw_hi = 0;
    std::int64_t twice_largest = 0; // twice the largest cutter; the next three likewise
    std::int64_t twice_small = 0, twice_tool = 0, twice_recommended = 0; // size classes end here
    std::vector<AskedHole> holes; // those that leave the head a seat
};

// Limits of practice that every screw shares.
struct Limits {
    std::int64_t head_clearance = 0;
    std::int64_t slip_least = 0, slip_most = 0;
};

struct CutDown {
    Limits limits;
    std::vector<Asked> asked;
};

inline constexpr auto k_one_screw = "5/16-18 socket head cap";

// The one screw and the house list of a catalogue.
[[nodiscard]] CutDown cut_down(const store::File& file);

} // namespace speed
