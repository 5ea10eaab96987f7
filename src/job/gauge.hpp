// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The cutting diameter D of a tool that a caliper cannot span: from readings over an odd number of
// flutes, over its pilot, or from the hole it cut. The tool is n evenly spaced lands, arcs of one
// circle, each as wide as the land angle w at the centre (0: sharp). Every reading is a range, and
// so is the result: it holds for every tool that could have given the readings, and no narrower
// range does. Source of every formula here: derived; geometry of n tips on a circle.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "job/figure.hpp"
#include "length/length.hpp"

namespace job {

struct Gauged {
    std::vector<Figure> figures; // the diameter first, then what else is learned
    length::MaybeRange diameter; // absent: not known on both sides
    std::vector<std::string> notes;
};

// The functions below throw error::BadData for readings that no such tool gives and for fewer than
// two flutes, saying in `unit` what would be possible.

struct JawReadings {
    int flutes = 0;
    length::MaybeRange least; // smallest reading as the tool is turned; not of two flutes
    length::MaybeRange most;  // largest; at least one of them is known
};

// Between flat parallel jaws. With s = 180/n, least = D/2 (1 + cos(s - w/2)) and
// most = D cos(s/2 - w/2), or D where w > s; of an even n, least = D cos(s - w/2), most = D. Both
// together give w too; one alone gives D between w = 0 and the full circle.
[[nodiscard]] Gauged gauge_jaws(const JawReadings& readings, length::Unit unit);

struct ChordReading {
    int flutes = 0;
    int skipped = 0; // corners between the two, 0 to flutes - 2
    length::Range chord;
};

// Between the same corner of two lands: D = chord / sin(180 (skipped + 1) / n), whatever w.
[[nodiscard]] Gauged gauge_chord(const ChordReading& reading);

struct Master {
    length::Range diameter; // of a round pin or plug
    length::Range reading;
};

struct AnvilReading {
    int flutes = 0;
    double angle = 0; // of the V, degrees, 10 to 170
    length::Range reading;
    std::optional<Master> master; // absent: the instrument reads the diameter of a round piece
};

// In a V, rocked to the largest reading S against a flat spindle square to the V's middle plane.
// From the apex a round piece stands K D high, K = (1 + 1/sin(angle/2))/2; a tool as high if three
// of its lands meet V and spindle at once, else less, down to L D with w = 0, L being the greatest
// |1 + (e^i(x - a) + e^i(y + a))/(2 sin(angle/2))|/2 with a = 90 + angle/2 over the tips at x, y.
// D is from (S - Sm + K Dm)/K to (S - Sm + K Dm)/L.
[[nodiscard]] Gauged gauge_anvil(const AnvilReading& reading, length::Unit unit);

// The widest V in which n sharp tips stand as high as a round piece: 180 (1 - 2/n) degrees for odd
// n, 180 (1 - 4/n) for even; none for two and four flutes.
[[nodiscard]] std::optional<double> suited_anvil_angle(int flutes);

struct PilotReading {
    length::Range pilot;                  // diameter of the pilot or of a concentric shank
    length::Range reading;                // from a tip to the far side of the pilot
    std::optional<length::Length> runout; // of the tips about the pilot, full indicator reading
};

// D = 2 reading - pilot, either way by the runout; any number of flutes. Without a runout only
// what D is if the pilot is concentric.
[[nodiscard]] Gauged gauge_over_pilot(const PilotReading& reading, length::Unit unit);

struct HoleReading {
    length::Range hole;
    std::optional<length::Length> runout;    // at most, full indicator reading
    std::optional<length::Length> clearance; // at most, of the pilot in its hole
};

// D is from hole - runout - clearance to hole; without both of them only the upper bound is known.
[[nodiscard]] Gauged gauge_hole(const HoleReading& reading, length::Unit unit);

} // namespace job
