// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Why a seat that was left as a drill's point is worse than a flat one, in figures for one screw.
// The head touches a cone of 118 degrees along a ring at its rim.
#pragma once

#include <vector>

#include "job/figure.hpp"

namespace job {

// What the figures of a cone are worked out from; all in mm and thousandths of a nut factor.
struct ConeSeat {
    length::Range head; // diameter, over the hole in all its range
    length::Range hole;
    length::Range counterbore; // which the drill that makes it would have
    double screw = 0;          // diameter, mm
    double pitch = 0;          // mm
    double factor = 0;         // K of the screw on a flat seat
};

// Gap between head and cone at the edge of the hole: (head - hole) / 2 / tan 59.
[[nodiscard]] Figure cone_gap(const ConeSeat& seat);

// How much deeper the drill goes to its corners' depth: its diameter / 2 / tan 59.
[[nodiscard]] Figure cone_depth(const ConeSeat& seat);

// Width of the ring that carries `force` at the material's limit: F / (pi head limit), never more
// than the head has over the hole. Source: geometry, the pressure on the ring taken as even.
[[nodiscard]] Figure cone_ring(const ConeSeat& seat, const Measure& force, const Measure& limit);

// Whether even the whole head would bear more than the limit.
[[nodiscard]] bool all_of_head(const ConeSeat& seat, const Measure& force, const Measure& limit);

// Share of the force that the same torque gives less than on a flat seat, friction being alike.
// T = F (0.16 P + 0.58 d2 mu + r mu) with r = (head + hole) / 4 on a flat seat and
// head / 2 / sin 59 on the cone; mu is that which gives K on the flat. Source: VDI 2230 for the
// flat seat; the cone is derived.
[[nodiscard]] Figure cone_force_lost(const ConeSeat& seat);

[[nodiscard]] std::vector<Figure> cone_figures(const ConeSeat& seat, const Measure& force,
                                               const Measure& limit);

} // namespace job
