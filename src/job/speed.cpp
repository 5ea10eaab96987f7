// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/speed.hpp"

#include <numbers>

namespace job {

namespace {

constexpr double k_nm_in_metre = 1e9;

}

double turns_a_minute(double surface_speed, length::Length cutter) {
    const double metres = static_cast<double>(cutter.nm()) / k_nm_in_metre;
    return surface_speed / (std::numbers::pi * metres);
}

} // namespace job
