// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A cutter as points on a circle, and instruments that measure points: no formula of a land angle
// or a count of flutes is in here, so the formulas can be checked against it.
#pragma once

#include <complex>
#include <random>
#include <vector>

#include "length/range.hpp"

namespace tips {

using Point = std::complex<double>;
using Points = std::vector<Point>;

// `flutes` arcs of a circle of this diameter about 0, each `land` degrees wide, by so many points
// from corner to corner (1: the land is sharp).
Points cutter(int flutes, double diameter, double land, int points_in_land);

struct Jaws {
    double least;
    double most;
};
// Flat parallel jaws closed on the points in every direction.
Jaws between_jaws(const Points& points);

// From the apex of a V of this angle, in degrees, to a flat spindle that comes down on the points,
// which are rocked to the largest.
double in_anvil(const Points& points, double angle);

// A range of this width, in nanometres, that holds the value, which lies anywhere in it.
length::Range reading_of(double value, double width, std::mt19937& random);

// The two whole nanometres about a value.
length::Range exact_reading(double value);

} // namespace tips
