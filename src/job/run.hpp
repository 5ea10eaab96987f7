// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Running the cutter: surface speed, spindle speed, feed, and how long it takes.
#pragma once

#include <vector>

#include "job/figure.hpp"
#include "job/speed.hpp"
#include "job/steel.hpp"
#include "trade/tables.hpp"

namespace job {

// Surface speeds of a counterbore in the material, from the first try to the ceiling, the one to go
// by first. High-speed steel and carbide: the table's; carbon steel: half of it; where nobody
// recorded what it is, both.
[[nodiscard]] std::vector<Figure> surface_speeds(const trade::Material& material, Steel steel);

// What the steel asks for, beyond its speed; empty for high-speed steel.
[[nodiscard]] std::string steel_words(Steel steel);

// Spindle speed for one of them, over all that the cutter may measure.
[[nodiscard]] Figure turns(const Figure& surface_speed, const length::Range& cutter);

// The spindle speed at which the pilot's own surface goes as fast as a plain bearing with a little
// oil should: 65 ft/min. Common practice, no source.
[[nodiscard]] Figure pilot_turns(const length::Range& pilot);

// The speed of the machine for the low end of `turns`, or for the pilot's where that is less.
// `speed` is what machine_speed() chose.
[[nodiscard]] Figure machine_turns(const trade::Machine& machine, const Figure& turns,
                                   const MachineSpeed& speed);

// Spindle speed of the drill that makes the hole.
[[nodiscard]] Figure drill_turns(const trade::Material& material, const trade::Drill& drill);

[[nodiscard]] Figure feed_a_turn(const trade::Feed& feed, const trade::Material& material);

// How the lever is to be felt, where the machine has no power feed; a dwell only where the material
// allows one.
[[nodiscard]] std::string hand_feed_words(const trade::Material& material);

// What a run takes: setting up, and for each hole the cut and the handling. The bounds of feed and
// turns give the cut; setting up and handling are common practice, and rough.
[[nodiscard]] Figure time_for(int count, length::Length depth, const Figure& feed,
                              const Figure& turns);

} // namespace job
