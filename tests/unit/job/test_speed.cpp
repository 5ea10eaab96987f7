// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include "job/speed.hpp"

using length::Length;

TEST_CASE("turns a minute are those of published examples") {
    // 80 ft/min with a 1/2 in tool: 611, both in a drilling chapter and as 12 V / (pi D).
    const double turns = job::turns_a_minute(80 * job::k_metres_in_foot, length::sixty_fourths(32));
    CHECK(turns == doctest::Approx(611.15).epsilon(1e-5));
}
