// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <cmath>

#include "error/error.hpp"
#include "job/gauge.hpp"
#include "job/gauge_parts.hpp"

namespace job {

namespace {

void refuse_skipped(const ChordReading& reading) {
    refuse_flutes(reading.flutes);
    if (reading.skipped >= 0 && reading.skipped <= reading.flutes - 2)
        return;
    const std::string most = std::to_string(reading.flutes - 2);
    throw error::BadData(std::to_string(reading.flutes) + " flutes have no corner after skipping " +
                             std::to_string(reading.skipped),
                         most == "0" ? "skip none: 0" : "skip 0 to " + most);
}

// Of half the chord's angle; the largest that skipping can give.
double best_sine(int flutes) {
    const int farthest = flutes / 2; // corners, rounded down
    return std::sin(radians(180.0 * farthest / flutes));
}

} // namespace

Gauged gauge_chord(const ChordReading& reading) {
    refuse_skipped(reading);
    const double sine = std::sin(radians(180.0 * (reading.skipped + 1) / reading.flutes));
    Gauged gauged;
    gauged.diameter =
        outward(as_number(reading.chord.lo) / sine, as_number(reading.chord.hi) / sine);
    gauged.figures.push_back(diameter_figure(*gauged.diameter,
                                             "chord / sin(180 x (skipped + 1) / flutes)",
                                             {flutes_input(reading.flutes),
                                              {"skipped", pure(reading.skipped)},
                                              {"chord", reading.chord}}));
    gauged.figures.push_back(
        amplification_figure(1 / sine, "1 / sin(180 x (skipped + 1) / flutes)"));
    constexpr double k_better = 1.001;
    if (best_sine(reading.flutes) > sine * k_better)
        gauged.notes.push_back("skipping " + std::to_string(reading.flutes / 2 - 1) +
                               " gives the longest chord, and the least error");
    return gauged;
}

} // namespace job
