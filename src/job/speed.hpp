// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Turns and surface speed.
#pragma once

#include "length/length.hpp"

namespace job {

inline constexpr double k_metres_in_foot = 0.3048;

// Turns a minute of a cutter of diameter `cutter` (> 0) at `surface_speed` metres a minute:
// n = v / (pi d). Source: the definition; Machinery's Handbook states it as 12 V / (pi D).
[[nodiscard]] double turns_a_minute(double surface_speed, length::Length cutter);

} // namespace job
