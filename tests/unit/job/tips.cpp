// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "tips.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <numbers>

namespace tips {

namespace {

constexpr double k_turn = 2 * std::numbers::pi;

double cross(Point a, Point b) {
    return std::imag(std::conj(a) * b);
}

// How far the points reach in a direction, given as a point at distance 1.
double reach(const Points& points, Point direction) {
    double most = -HUGE_VAL;
    for (const Point p : points)
        most = std::max(most, std::real(p * std::conj(direction)));
    return most;
}

double anvil_height(const Points& points, double angle, double turn) {
    const double half = angle / 2 * k_turn / 360;
    const double left = reach(points, std::polar(1.0, turn + k_turn / 4 + half));
    const double right = reach(points, std::polar(1.0, turn - k_turn / 4 - half));
    return reach(points, std::polar(1.0, turn)) + (left + right) / (2 * std::sin(half));
}

// The highest within a step of this turn.
double peak_near(const Points& points, double angle, double turn, double step) {
    constexpr int k_rounds = 6;
    constexpr int k_finer = 8;
    double best = 0;
    for (int round = 0; round < k_rounds; ++round) {
        const double centre = turn;
        for (int i = -k_finer; i <= k_finer; ++i) {
            const double here = centre + i * step / k_finer;
            const double height = anvil_height(points, angle, here);
            if (height > best) {
                best = height;
                turn = here;
            }
        }
        step /= k_finer / 2;
    }
    return best;
}

} // namespace

Points cutter(int flutes, double diameter, double land, int points_in_land) {
    Points points;
    for (int flute = 0; flute < flutes; ++flute)
        for (int i = 0; i < points_in_land; ++i) {
            const double part = points_in_land == 1 ? 0 : 1.0 * i / (points_in_land - 1) - 0.5;
            points.push_back(
                std::polar(diameter / 2, k_turn * (1.0 * flute / flutes + land * part / 360)));
        }
    return points;
}

// The points are in the order of their hull: closed tightest, one jaw lies on a side of it; the
// largest reading is from one point to another.
Jaws between_jaws(const Points& points) {
    Jaws jaws{HUGE_VAL, 0};
    double most = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j)
            most = std::max(most, std::norm(points[i] - points[j]));
        const Point from = points[i];
        const Point side = points[(i + 1) % points.size()] - from;
        if (std::abs(side) < 1e-9 * std::abs(from))
            continue;
        double across = 0;
        for (const Point p : points)
            across = std::max(across, std::abs(cross(side, p - from)));
        jaws.least = std::min(jaws.least, across / std::abs(side));
    }
    jaws.most = std::sqrt(most);
    return jaws;
}

double in_anvil(const Points& points, double angle) {
    constexpr int k_steps = 720;
    constexpr double k_step = k_turn / k_steps;
    std::vector<double> heights;
    for (int i = 0; i < k_steps; ++i)
        heights.push_back(anvil_height(points, angle, i * k_step));
    double best = 0;
    for (std::size_t i = 0; i < k_steps; ++i) {
        const double before = heights[(i + k_steps - 1) % k_steps];
        const double after = heights[(i + 1) % k_steps];
        if (heights[i] >= before && heights[i] >= after)
            best =
                std::max(best, peak_near(points, angle, k_step * static_cast<double>(i), k_step));
    }
    return best;
}

length::Range reading_of(double value, double width, std::mt19937& random) {
    const double below = std::uniform_real_distribution<double>(0, width)(random);
    return {length::Length::from_nm(static_cast<std::int64_t>(std::floor(value - below))),
            length::Length::from_nm(static_cast<std::int64_t>(std::ceil(value - below + width)))};
}

length::Range exact_reading(double value) {
    return {length::Length::from_nm(static_cast<std::int64_t>(std::floor(value))),
            length::Length::from_nm(static_cast<std::int64_t>(std::ceil(value)))};
}

} // namespace tips
