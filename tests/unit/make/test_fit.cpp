// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include "bench.hpp"
#include "make/fit.hpp"
#include "match/wanted.hpp"

using bench::tenths;
using length::micrometres;
using length::Range;
using length::Unit;

// Common practice: .002 to .004 in under the drill.
TEST_CASE("the usual pilot is under its drill, or under the least limit of its hole") {
    const auto practice = bench::practice();
    match::CandidateHole hole;
    hole.drill = trade::Drill{"29/64", trade::DrillKind::fraction, length::sixty_fourths(29)};
    hole.size = length::exactly(length::sixty_fourths(29));
    hole.hole = tenths(4531, 4608);
    CHECK(match::usual_pilot(hole, practice, Unit::inch) ==
          Range{length::sixty_fourths(29) - tenths(40), length::sixty_fourths(29) - tenths(20)});
    hole.drill = trade::Drill{"8.4 mm", trade::DrillKind::metric, micrometres(8400)};
    hole.size = length::exactly(micrometres(8400));
    // DIN 373, M8 fine: pilot 8.4 e8, 8.353 to 8.375.
    const Range e8{micrometres(8353), micrometres(8375)};
    CHECK(match::usual_pilot(hole, practice, Unit::inch) == e8);
    hole.drill.reset();
    CHECK(match::usual_pilot(hole, practice, Unit::millimetre) == e8);
    hole.size = tenths(4531, 4571);
    CHECK(match::usual_pilot(hole, practice, Unit::inch) == tenths(4491, 4511));
}

TEST_CASE("a width stays within its limits, on whole steps, as near its aim as they allow") {
    const auto step = tenths(1);
    CHECK(make::around(tenths(5000), tenths(10), tenths(4900, 5100), step) == tenths(4995, 5005));
    CHECK(make::around(tenths(4800), tenths(10), tenths(4900, 5100), step) == tenths(4900, 4910));
    CHECK(make::around(tenths(5200), tenths(10), tenths(4900, 5100), step) == tenths(5090, 5100));
    CHECK(make::around(tenths(5000), tenths(10), tenths(4998, 5003), step) == tenths(4998, 5003));
}
