// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include "bench.hpp"
#include "make/fit.hpp"

using bench::tenths;
using length::micrometres;
using length::Range;

// ISO 286-2 table of e8, upper deviations as reprinted by a university and an engineering site
// (-14, -20, -25, -32, -40, -50, -60, -72) and IT8 in a tool holder maker's table of h8 (14, 18,
// 22, 27, 33, 39, 46, 54).
TEST_CASE("e8 is that of ISO 286-2, upper limit of each step included") {
    struct Row {
        std::int64_t nominal, lo, hi;
    };
    for (const auto& row :
         {Row{3000, 2972, 2986}, Row{3100, 3062, 3080}, Row{6000, 5962, 5980},
          Row{6600, 6553, 6575}, Row{8400, 8353, 8375}, // DIN 373, M8 fine: 8.353 to 8.375
          Row{10000, 9953, 9975}, Row{10500, 10441, 10468}, Row{18000, 17941, 17968},
          Row{22000, 21927, 21960}, Row{33000, 32911, 32950}, Row{66000, 65894, 65940},
          Row{90000, 89874, 89928}}) {
        CAPTURE(row.nominal);
        CHECK(make::e8(micrometres(row.nominal)) ==
              Range{micrometres(row.lo), micrometres(row.hi)});
    }
}

// Common practice: .002 to .004 in under the drill.
TEST_CASE("the usual pilot is under its drill, or under the least limit of its hole") {
    const auto practice = bench::practice();
    match::CandidateHole hole;
    hole.drill = trade::Drill{"29/64", trade::DrillKind::fraction, length::sixty_fourths(29)};
    hole.hole = tenths(4531, 4608);
    CHECK(make::usual_pilot(hole, practice) ==
          Range{length::sixty_fourths(29) - tenths(40), length::sixty_fourths(29) - tenths(20)});
    hole.drill = trade::Drill{"8.4 mm", trade::DrillKind::metric, micrometres(8400)};
    CHECK(make::usual_pilot(hole, practice) == make::e8(micrometres(8400)));
    hole.drill.reset();
    CHECK(make::usual_pilot(hole, practice) == tenths(4491, 4511));
}

TEST_CASE("a width stays within its limits, on whole steps, as near its aim as they allow") {
    const auto step = tenths(1);
    CHECK(make::around(tenths(5000), tenths(10), tenths(4900, 5100), step) == tenths(4995, 5005));
    CHECK(make::around(tenths(4800), tenths(10), tenths(4900, 5100), step) == tenths(4900, 4910));
    CHECK(make::around(tenths(5200), tenths(10), tenths(4900, 5100), step) == tenths(5090, 5100));
    CHECK(make::around(tenths(5000), tenths(10), tenths(4998, 5003), step) == tenths(4998, 5003));
}
