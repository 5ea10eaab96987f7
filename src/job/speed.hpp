// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Turns and surface speed.
#pragma once

#include <optional>

#include "length/length.hpp"
#include "trade/machine.hpp"

namespace job {

// Turns a minute of a cutter of diameter `cutter` (> 0) at `surface_speed` metres a minute:
// n = v / (pi d). Source: the definition; Machinery's Handbook states it as 12 V / (pi D).
[[nodiscard]] double turns_a_minute(double surface_speed, length::Length cutter);

// The speed to set on a machine.
struct MachineSpeed {
    int turns = 0;         // a minute
    bool too_fast = false; // even the slowest is faster than wanted

    bool operator==(const MachineSpeed&) const = default;
};

// The highest of the machine's speeds that is not over `wanted` turns a minute (> 0); where the
// speed is variable, `wanted` rounded down to two figures, within its range. Where every speed is
// over it, the slowest. Absent when the machine's speeds are not known. Never over: common
// practice.
[[nodiscard]] std::optional<MachineSpeed> machine_speed(const trade::Machine& machine,
                                                        double wanted);

} // namespace job
