// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include "job/speed.hpp"
#include "trade/conversion.hpp"

namespace {

struct Example {
    double feet_a_minute;
    int sixty_fourths; // diameter
    double printed;    // turns a minute
};

double turns(const Example& example) {
    return job::turns_a_minute(example.feet_a_minute * trade::k_metres_in_foot,
                               length::sixty_fourths(example.sixty_fourths));
}

} // namespace

TEST_CASE("turns a minute are those of published examples") {
    // 80 ft/min with a 1/2 in tool: 611, both in a drilling chapter and as 12 V / (pi D).
    CHECK(turns({80, 32, 611}) == doctest::Approx(611.15).epsilon(1e-5));
    // "How to read a drill press speed and feed chart", a machinist's page: 3/8 in drill, 90
    // ft/min, 3.82 V / D, 917.
    CHECK(turns({90, 24, 917}) == doctest::Approx(917).epsilon(.001));
    // "General speeds and feeds formulas": 1/2 in, 100 ft/min, 12 V / (3.14 D), 764.
    CHECK(turns({100, 32, 764}) == doctest::Approx(764).epsilon(.001));
    // "What is cutting speed, feed and depth of cut": 50 mm, 200 m/min, with 3.14 for pi: 1274.
    CHECK(job::turns_a_minute(200, length::millimetres(50)) == doctest::Approx(1274).epsilon(.001));
    // A drill maker's page of formulas: 12 mm at 1350 turns cuts 50.9 m/min.
    CHECK(job::turns_a_minute(50.9, length::millimetres(12)) ==
          doctest::Approx(1350).epsilon(.001));
}

TEST_CASE("turns a minute are those of a published table") {
    // A table for high-speed steel drills in mild steel at 80 to 100 ft/min, worked out at 90 and
    // rounded by it to 5 or 10 turns.
    for (const Example& row :
         {Example{90, 4, 5500}, Example{90, 8, 2750}, Example{90, 16, 1375}, Example{90, 24, 920},
          Example{90, 32, 690}, Example{90, 48, 460}, Example{90, 64, 345}}) {
        CAPTURE(row.printed);
        CHECK(turns(row) == doctest::Approx(row.printed).epsilon(.005));
    }
}

TEST_CASE("the shop's short form 4 V / D gives 4.7 % more, by taking 4 for 12 / pi") {
    // "General speeds and feeds formulas": 1/2 in, 100 ft/min, 800 by the short form. A careers
    // site's tool and die maker: 1/2 in, 80 ft/min, 4 V / D, which is 640. Army course OD1645 gives
    // the same form. They disagree with the definition, not with each other.
    for (const Example& row : {Example{100, 32, 800}, Example{80, 32, 640}}) {
        CAPTURE(row.printed);
        CHECK(row.printed / turns(row) == doctest::Approx(1.0472).epsilon(1e-4));
    }
}
