// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include "job/speed.hpp"

using job::MachineSpeed;

namespace {

trade::Machine stepped() {
    return {.name = "bench drill",
            .chuck = {},
            .morse = {},
            .speeds = {250, 500, 1000, 2000},
            .travel = {}};
}

trade::Machine variable() {
    return {.name = "mill",
            .chuck = {},
            .morse = {},
            .speeds = {150, 3000},
            .variable = true,
            .travel = {}};
}

} // namespace

TEST_CASE("a machine with steps takes the next one below") {
    CHECK(job::machine_speed(stepped(), 611.15) == MachineSpeed{500, false});
    CHECK(job::machine_speed(stepped(), 999.99) == MachineSpeed{500, false});
    CHECK(job::machine_speed(stepped(), 1000) == MachineSpeed{1000, false});
    CHECK(job::machine_speed(stepped(), 1000.01) == MachineSpeed{1000, false});
    CHECK(job::machine_speed(stepped(), 250) == MachineSpeed{250, false});
    CHECK(job::machine_speed(stepped(), 9000) == MachineSpeed{2000, false});
}

TEST_CASE("a machine whose slowest step is too fast says so") {
    CHECK(job::machine_speed(stepped(), 249.9) == MachineSpeed{250, true});
    CHECK(job::machine_speed(variable(), 149.9) == MachineSpeed{150, true});
}

TEST_CASE("a variable machine takes what is wanted within its range, down to two figures") {
    CHECK(job::machine_speed(variable(), 611.15) == MachineSpeed{610, false});
    CHECK(job::machine_speed(variable(), 158.9) == MachineSpeed{150, false});
    CHECK(job::machine_speed(variable(), 1190) == MachineSpeed{1100, false});
    CHECK(job::machine_speed(variable(), 150) == MachineSpeed{150, false});
    CHECK(job::machine_speed(variable(), 2999.9) == MachineSpeed{2900, false});
    CHECK(job::machine_speed(variable(), 3000) == MachineSpeed{3000, false});
    CHECK(job::machine_speed(variable(), 5000) == MachineSpeed{3000, false});
}

TEST_CASE("a machine whose speeds are not known has none to set") {
    auto machine = stepped();
    machine.speeds.clear();
    CHECK(!job::machine_speed(machine, 500));
}

TEST_CASE("the step is the fastest that is not over what is wanted, whatever is wanted") {
    for (int wanted = 1; wanted < 2500; wanted += 7) {
        const auto set = job::machine_speed(stepped(), wanted);
        REQUIRE(set);
        CAPTURE(wanted);
        CHECK(set->too_fast == (set->turns > wanted));
        for (const int step : stepped().speeds)
            CHECK((step <= set->turns || step > wanted));
    }
}
