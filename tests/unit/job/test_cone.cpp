// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A seat left as a drill's point, against its geometry worked out another way.
#include <doctest/doctest.h>

#include "job/cone.hpp"
#include "length/print.hpp"

using job::Kind;
using job::Measure;
using length::Length;

namespace {

job::ConeSeat quarter_inch() {
    job::ConeSeat seat;
    seat.head = length::exactly(length::thousandths(360));
    seat.hole = length::exactly(length::thousandths(281));
    seat.counterbore = length::exactly(length::thousandths(438));
    seat.screw = 6.35;
    seat.pitch = 25.4 / 20;
    seat.factor = .20;
    return seat;
}

} // namespace

TEST_CASE("the gap and the extra depth are .3004 of the diameter under a 118 degree point") {
    // The cone's height over half its diameter: 1 / (2 tan 59) = .30043. A 1/4 screw with a face of
    // .360 over a hole of .281: .024 in (derived, no source).
    const auto gap = std::get<length::Range>(job::cone_gap(quarter_inch()).value);
    CHECK(length::as_mm(gap.lo) / 25.4 == doctest::Approx(.30043 * .079).epsilon(1e-4));
    const auto deeper = std::get<length::Range>(job::cone_depth(quarter_inch()).value);
    CHECK(length::as_mm(deeper.hi) / 25.4 == doctest::Approx(.30043 * .438).epsilon(1e-4));
}

TEST_CASE("the ring at its limit carries just the force") {
    const Measure force{Kind::force, 12'000, 12'000};
    const auto ring = std::get<length::Range>(
        job::cone_ring(quarter_inch(), force, {Kind::pressure, 490, 490}).value);
    const double carried = length::as_mm(ring.lo) * 3.14159265358979 * .360 * 25.4 * 490;
    CHECK(carried == doctest::Approx(12'000).epsilon(1e-4));
}

TEST_CASE("the ring is never more than the head has over its hole") {
    const Measure force{Kind::force, 1'000, 1'000'000};
    const Measure limit{Kind::pressure, 200, 490};
    const auto ring = std::get<length::Range>(job::cone_ring(quarter_inch(), force, limit).value);
    // (.360 - .281) / 2
    CHECK(ring.hi == length::inches_e5(3950));
    CHECK(job::all_of_head(quarter_inch(), force, limit));
    CHECK(!job::all_of_head(quarter_inch(), {Kind::force, 1'000, 1'000}, limit));
}

TEST_CASE("the cone takes force from the same torque, more with more friction, none without") {
    const auto lost = [](double factor) {
        auto seat = quarter_inch();
        seat.factor = factor;
        return std::get<Measure>(job::cone_force_lost(seat).value).lo;
    };
    CHECK(lost(.20) > .1);
    CHECK(lost(.20) < .3);
    CHECK(lost(.27) > lost(.18));
    // Without friction torque is slope alone: K d = 0.16 P.
    CHECK(lost(.16 * (25.4 / 20) / 6.35) == doctest::Approx(0).epsilon(1e-9));
}
