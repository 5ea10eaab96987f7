// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The seat under the head: its area, the force that a torque gives, and the pressure. Guidance: the
// joint's designer decides.
#pragma once

#include <optional>
#include <vector>

#include "job/figure.hpp"
#include "trade/screw.hpp"

namespace job {

// Flat seat: pi/4 (face^2 - hole^2). A broken edge counts as hole. The face is over the hole in all
// its range. Source: geometry, as in VDI 2230.
[[nodiscard]] Figure bearing_area(const length::Range& face, const length::Range& hole);

// Whether the pitch is the coarse one of its size, or none was said. Charts of torque are for it.
[[nodiscard]] bool coarse(const trade::Screw& screw);

// Millimetres of pitch: of the pitch that was said, else of the coarser one listed. Absent without
// any.
[[nodiscard]] std::optional<double> pitch_mm(const trade::Screw& screw);

// Tensile stress area of an inch thread: pi/4 (D - 0.9743 P)^2, ASME B1.1; of a metric one:
// pi/4 (d - 0.9382 P)^2, ISO 898-1. `diameter` and `pitch` in mm.
[[nodiscard]] Figure stress_area(double diameter, double pitch, bool metric);

// The force to tighten to: three quarters of the proof stress on the stress area. Source: machine
// design textbooks, for joints that are taken apart again.
[[nodiscard]] Figure usual_force(const trade::Grade& grade, const Figure& area);

// What the screw must bear by its grade: proof stress on the stress area.
[[nodiscard]] Figure proof_load(const trade::Grade& grade, const Figure& area);

// The torques that charts print for this screw with this surface, as a range; absent where none
// was printed for it.
[[nodiscard]] std::optional<Figure> chart_torque(const std::vector<trade::Torque>& torques,
                                                 const std::string& surface);

// T = K d F with the lowest K that was seen of the surface, so that the force is not over `force`
// even there.
[[nodiscard]] Figure torque_for(const Measure& force, double diameter,
                                const trade::NutFactor& factor);

// F = T / (K d), with K over all that was seen of the surface.
[[nodiscard]] Figure force_from(const Measure& torque, double diameter,
                                const trade::NutFactor& factor);

// p = F / A.
[[nodiscard]] Figure seat_pressure(const Measure& force, const Measure& area);

// The material's limit, lowest to highest of the editions that it is from.
[[nodiscard]] Figure pressure_limit(const trade::Material& material);

} // namespace job
