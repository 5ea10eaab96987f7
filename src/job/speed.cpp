// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/speed.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>

namespace job {

namespace {

constexpr double k_nm_in_metre = 1e9;

// `value` >= 1.
int down_to_two_figures(double value) {
    const double step = std::pow(10.0, std::max(0.0, std::floor(std::log10(value)) - 1));
    return static_cast<int>(std::floor(value / step) * step);
}

} // namespace

double turns_a_minute(double surface_speed, length::Length cutter) {
    const double metres = static_cast<double>(cutter.nm()) / k_nm_in_metre;
    return surface_speed / (std::numbers::pi * metres);
}

std::optional<MachineSpeed> machine_speed(const trade::Machine& machine, double wanted) {
    if (machine.speeds.empty())
        return std::nullopt;
    const int slowest = machine.speeds.front();
    if (wanted < slowest)
        return MachineSpeed{slowest, true};
    const auto above = std::upper_bound(machine.speeds.begin(), machine.speeds.end(), wanted);
    if (machine.variable && above != machine.speeds.end())
        return MachineSpeed{std::max(slowest, down_to_two_figures(wanted))};
    return MachineSpeed{*std::prev(above)};
}

} // namespace job
