// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The V pushes a hull of points up to where it rests on both faces. How high a point of the hull
// then stands is a sum of three cosines of one turning angle, one for each contact, and the largest
// of such a sum is its amplitude: so the largest reading is found among the choices of three tips,
// without searching over the turn.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <complex>
#include <cstdlib>

#include "error/error.hpp"
#include "job/gauge.hpp"
#include "job/gauge_parts.hpp"
#include "match/say.hpp"

namespace job {

using match::say;

namespace {

constexpr double k_least_angle = 10;
constexpr double k_largest_angle = 170;
// Nearer than this nobody makes a V; what it changes is under a millionth of the diameter.
constexpr double k_same_angle = 0.05;

void refuse_angle(double angle) {
    if (!(angle >= k_least_angle && angle <= k_largest_angle))
        throw error::BadData(
            fmt::format("no angle of a V: {}", angle),
            fmt::format("from {} to {} degrees between its faces", k_least_angle, k_largest_angle));
}

// Apex to spindle over a round piece of diameter 1.
double round_height(double sine) {
    return (1 + 1 / sine) / 2;
}

// The same over n sharp tips on a circle of diameter 1, rocked to the largest.
double sharp_height(int flutes, double angle) {
    const double sine = std::sin(radians(angle / 2));
    const double face = radians(90 + angle / 2); // from the spindle to the normal of a face
    const auto contact = [&](int tip, double turn) {
        return std::polar(1 / (2 * sine), radians(360.0 * tip / flutes) + turn);
    };
    double most = 0;
    for (int left = 0; left < flutes; ++left)
        for (int right = 0; right < flutes; ++right)
            most = std::max(most, std::abs(1.0 + contact(left, -face) + contact(right, face)) / 2);
    return std::min(most, round_height(sine));
}

// From the normals of the faces to the nearest tips, one tip being at the spindle.
bool suits(int flutes, double angle) {
    const double spacing = 360.0 / flutes;
    const double off = std::abs(std::remainder(90 + angle / 2, spacing));
    return off < k_same_angle;
}

std::string suited_words(int flutes) {
    const auto angle = suited_anvil_angle(flutes);
    if (!angle)
        return fmt::format("no V suits {} flutes: flat jaws read the diameter", flutes);
    return fmt::format("a V of {:.6g} deg suits {} flutes", *angle, flutes);
}

// What a round piece as high as the tool would measure, before the tool's own height is allowed
// for: lo and hi in nanometres.
struct Height {
    double lo;
    double hi;
};
Height height_over_apex(const AnvilReading& reading, double round) {
    const auto& r = reading.reading;
    if (!reading.master)
        return {as_number(r.lo) * round, as_number(r.hi) * round};
    const auto& m = *reading.master;
    return {as_number(r.lo - m.reading.hi) + round * as_number(m.diameter.lo),
            as_number(r.hi - m.reading.lo) + round * as_number(m.diameter.hi)};
}

void refuse_height(const Height& height, const AnvilReading& reading, double round,
                   length::Unit unit) {
    if (height.lo > 0)
        return;
    const auto& master = *reading.master; // without one a reading is over zero
    const auto down = outward(0, round * as_number(master.diameter.lo)).hi;
    throw error::BadData(
        fmt::format("the reading is too far under the master's: {} and {}",
                    say(reading.reading, unit), say(master.reading, unit)),
        fmt::format("less than {} under it, which is the apex of the V", say(down, unit)));
}

std::vector<Input> inputs_of(const AnvilReading& reading, double round, double sharp) {
    std::vector<Input> inputs = {flutes_input(reading.flutes),
                                 {"angle", Measure{Kind::angle, reading.angle, reading.angle}},
                                 {"reading", reading.reading}};
    if (reading.master) {
        inputs.push_back({"master", reading.master->diameter});
        inputs.push_back({"master reading", reading.master->reading});
    }
    inputs.push_back({"round height", pure(round)});
    inputs.push_back({"tool height", Measure{Kind::number, sharp, round}});
    return inputs;
}

std::string formula_of(const AnvilReading& reading) {
    const std::string height = "round height = (1 + 1/sin(angle/2)) / 2; tool height: that of "
                               "sharp tips to that of a round piece";
    return (reading.master ? "(reading - master reading + round height x master) / tool height; "
                           : "reading x round height / tool height; ") +
           height;
}

} // namespace

std::optional<double> suited_anvil_angle(int flutes) {
    const double angle = 180 * (1 - (flutes % 2 != 0 ? 2.0 : 4.0) / flutes);
    return angle > k_least_angle ? std::optional(angle) : std::nullopt;
}

Gauged gauge_anvil(const AnvilReading& reading, length::Unit unit) {
    refuse_flutes(reading.flutes);
    refuse_angle(reading.angle);
    const double round = round_height(std::sin(radians(reading.angle / 2)));
    const double sharp = sharp_height(reading.flutes, reading.angle);
    const Height height = height_over_apex(reading, round);
    refuse_height(height, reading, round, unit);
    Gauged gauged;
    gauged.diameter = outward(height.lo / round, height.hi / sharp);
    gauged.figures.push_back(
        diameter_figure(*gauged.diameter, formula_of(reading), inputs_of(reading, round, sharp)));
    gauged.figures.push_back(
        amplification_figure((reading.master ? 1 : round) / sharp,
                             reading.master ? "1 / tool height of sharp tips"
                                            : "round height / tool height of sharp tips"));
    if (!suits(reading.flutes, reading.angle))
        gauged.notes.push_back(
            fmt::format("this V does not suit {} flutes: the lower bound is for lands as wide as "
                        "can be, the upper for sharp ones; {}",
                        reading.flutes, suited_words(reading.flutes)));
    return gauged;
}

} // namespace job
