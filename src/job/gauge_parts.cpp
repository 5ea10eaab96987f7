// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/gauge_parts.hpp"

#include <cmath>
#include <cstdint>
#include <numbers>

#include "error/error.hpp"

namespace job {

namespace {

constexpr double k_half_turn = 180;
constexpr double k_arithmetic = 1e-6; // nanometres

} // namespace

double as_number(length::Length value) {
    return static_cast<double>(value.nm());
}

double radians(double angle) {
    return angle * std::numbers::pi / k_half_turn;
}

double degrees(double angle) {
    return angle * k_half_turn / std::numbers::pi;
}

length::Range outward(double lo_nm, double hi_nm) {
    const auto lo = static_cast<std::int64_t>(std::floor(lo_nm + k_arithmetic));
    const auto hi = static_cast<std::int64_t>(std::ceil(hi_nm - k_arithmetic));
    return length::spanning(length::Length::from_nm(lo), length::Length::from_nm(hi));
}

void refuse_flutes(int flutes) {
    if (flutes < 2)
        throw error::BadData("too few flutes: " + std::to_string(flutes), "at least 2");
}

Measure pure(double value) {
    return {Kind::number, value, value};
}

Input flutes_input(int flutes) {
    return {"flutes", pure(flutes)};
}

Figure diameter_figure(const length::Range& diameter, std::string formula,
                       std::vector<Input> inputs) {
    return {"cutting diameter", diameter, std::move(formula), std::move(inputs), k_tips_source};
}

Figure amplification_figure(double times, std::string formula) {
    return {"error amplification", pure(times), std::move(formula), {}, k_tips_source};
}

} // namespace job
