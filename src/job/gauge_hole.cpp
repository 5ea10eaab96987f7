// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <fmt/format.h>

#include "error/error.hpp"
#include "job/gauge.hpp"
#include "job/gauge_parts.hpp"
#include "match/say.hpp"

namespace job {

using length::Length;
using match::say;

namespace {

Gauged upper_bound(const HoleReading& reading) {
    Gauged gauged;
    gauged.figures.push_back({"cutting diameter at most",
                              length::exactly(reading.hole.hi),
                              "hole at its largest",
                              {{"hole", reading.hole}},
                              k_tips_source});
    gauged.notes.emplace_back("upper bound only: a cutter never cuts under its size; give the most "
                              "that the runout and the pilot's clearance can be for a lower one");
    return gauged;
}

} // namespace

Gauged gauge_hole(const HoleReading& reading, length::Unit unit) {
    if (!reading.runout || !reading.clearance)
        return upper_bound(reading);
    const Length lo = reading.hole.lo - *reading.runout - *reading.clearance;
    if (lo <= Length())
        throw error::BadData(
            fmt::format("runout and clearance leave nothing of the hole: {} and {} of {}",
                        say(*reading.runout, unit), say(*reading.clearance, unit),
                        say(reading.hole, unit)),
            "the most that each can be, in thousandths");
    Gauged gauged;
    gauged.diameter = length::Range{lo, reading.hole.hi};
    gauged.figures.push_back(
        diameter_figure(*gauged.diameter, "hole - runout - clearance to hole",
                        {{"hole", reading.hole},
                         {"runout at most", length::exactly(*reading.runout)},
                         {"clearance at most", length::exactly(*reading.clearance)}}));
    return gauged;
}

} // namespace job
