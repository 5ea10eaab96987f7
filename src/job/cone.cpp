// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/cone.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "length/print.hpp"

namespace job {

using length::as_mm;
using length::Length;
using length::Range;

namespace {

constexpr double k_half_point = 59 * std::numbers::pi / 180; // of a 118 degree point
constexpr auto k_derived = "geometry of a 118 degree point";

Length scaled(Length value, double factor) {
    return Length::from_nm(std::llround(static_cast<double>(value.nm()) * factor));
}

// From diameter to height of the cone.
double height_of_point() {
    return 1 / (2 * std::tan(k_half_point));
}

double middle_mm(const Range& range) {
    return (as_mm(range.lo) + as_mm(range.hi)) / 2;
}

Measure one(Kind kind, double value) {
    return {kind, value, value};
}

Length ring_for(double newtons, Length head, double limit) {
    const double mm = newtons / (std::numbers::pi * as_mm(head) * limit);
    return Length::from_nm(std::llround(mm * static_cast<double>(length::k_nm_per_mm)));
}

// What the head has over the hole, on the side.
Length most_ring(const ConeSeat& seat) {
    return (seat.head.hi - seat.hole.lo) / 2;
}

// T / F less the friction under the head, as a + b mu.
struct Thread {
    double slope;    // mm, without friction
    double friction; // mm for each of mu
};
Thread thread_of(const ConeSeat& seat) {
    const double pitch_dia = seat.screw - 0.6495 * seat.pitch;
    return {0.16 * seat.pitch, 0.58 * pitch_dia};
}

} // namespace

Figure cone_gap(const ConeSeat& seat) {
    const Range ring = seat.head - seat.hole;
    return {"gap at the hole",
            Range{scaled(ring.lo, height_of_point()), scaled(ring.hi, height_of_point())},
            "(head - hole) / 2 / tan 59",
            {{"head", seat.head}, {"hole", seat.hole}},
            k_derived};
}

Figure cone_depth(const ConeSeat& seat) {
    return {"deeper by the point",
            Range{scaled(seat.counterbore.lo, height_of_point()),
                  scaled(seat.counterbore.hi, height_of_point())},
            "drill / 2 / tan 59",
            {{"drill of the counterbore's size", seat.counterbore}},
            k_derived};
}

Figure cone_ring(const ConeSeat& seat, const Measure& force, const Measure& limit) {
    const Length most = most_ring(seat);
    return {"ring that carries the head",
            Range{std::min(ring_for(force.lo, seat.head.hi, limit.hi), most),
                  std::min(ring_for(force.hi, seat.head.lo, limit.lo), most)},
            "force / (pi x head x limit), at most (head - hole) / 2",
            {{"force", force}, {"head", seat.head}, {"hole", seat.hole}, {"limit", limit}},
            "geometry, the pressure taken as even"};
}

bool all_of_head(const ConeSeat& seat, const Measure& force, const Measure& limit) {
    return ring_for(force.hi, seat.head.lo, limit.lo) > most_ring(seat);
}

Figure cone_force_lost(const ConeSeat& seat) {
    const auto thread = thread_of(seat);
    const double head = middle_mm(seat.head);
    const double flat = (head + middle_mm(seat.hole)) / 4;
    const double cone = head / 2 / std::sin(k_half_point);
    const double lever = seat.factor * seat.screw; // T / F on the flat seat
    const double mu = (lever - thread.slope) / (thread.friction + flat);
    const double on_cone = thread.slope + mu * (thread.friction + cone);
    const double lost = mu > 0 ? 1 - lever / on_cone : 0;
    return {"share of the force lost",
            one(Kind::number, lost),
            "1 - (T/F on the flat) / (T/F on the cone), T/F = 0.16 P + mu (0.58 d2 + r)",
            {{"friction mu", one(Kind::number, mu)},
             {"K on the flat", one(Kind::number, seat.factor)},
             {"head", seat.head},
             {"hole", seat.hole}},
            "VDI 2230 for the flat seat; the cone derived"};
}

std::vector<Figure> cone_figures(const ConeSeat& seat, const Measure& force, const Measure& limit) {
    return {cone_gap(seat), cone_depth(seat), cone_ring(seat, force, limit), cone_force_lost(seat)};
}

} // namespace job
