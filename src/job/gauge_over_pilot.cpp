// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <fmt/format.h>

#include "error/error.hpp"
#include "job/gauge.hpp"
#include "job/gauge_parts.hpp"
#include "match/say.hpp"

namespace job {

using match::say;

Gauged gauge_over_pilot(const PilotReading& reading, length::Unit unit) {
    if (reading.reading.hi <= reading.pilot.lo)
        throw error::BadData(fmt::format("the reading is not over the pilot: {} and {}",
                                         say(reading.reading, unit), say(reading.pilot, unit)),
                             "from a tip to the far side of the pilot: half of both diameters, so "
                             "more than the pilot's");
    const length::Length runout = reading.runout.value_or(length::Length());
    const length::Length lo = reading.reading.lo * 2 - reading.pilot.hi - runout;
    const length::Length hi = reading.reading.hi * 2 - reading.pilot.lo + runout;
    if (lo <= length::Length())
        throw error::BadData(
            fmt::format("the runout leaves nothing of the cutter: {}", say(runout, unit)),
            "the full reading of an indicator on the tips, in thousandths");
    const length::Range diameter{lo, hi};
    Gauged gauged;
    std::vector<Input> inputs = {{"reading", reading.reading}, {"pilot", reading.pilot}};
    if (reading.runout) {
        gauged.diameter = diameter;
        inputs.push_back({"runout", length::exactly(runout)});
        gauged.figures.push_back(
            diameter_figure(diameter, "2 x reading - pilot +- runout", std::move(inputs)));
    } else {
        gauged.figures.push_back({"cutting diameter if concentric", diameter, "2 x reading - pilot",
                                  std::move(inputs), k_tips_source});
        gauged.notes.emplace_back("what the tips run out about the pilot is not in the range: "
                                  "give the runout");
    }
    gauged.figures.push_back(amplification_figure(2, "2 x reading; that of the pilot once"));
    return gauged;
}

} // namespace job
