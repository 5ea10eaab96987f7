// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// With u = 180/n - w/2, the angle between a land's edge and the point opposite another land's
// middle, both readings fall as u grows, and so does the smallest in the largest: so the u that a
// pair of readings allows is an interval, and the diameter's bounds lie at its ends.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "error/error.hpp"
#include "job/gauge.hpp"
#include "job/gauge_parts.hpp"
#include "match/say.hpp"

namespace job {

using length::Range;
using match::say;

namespace {

// The readings as shares of the diameter.
class Shares {
  public:
    explicit Shares(int flutes) : odd_(flutes % 2 != 0), sharp_(radians(180.0 / flutes)) {}

    [[nodiscard]] bool odd() const { return odd_; }
    [[nodiscard]] double sharp() const { return sharp_; } // the largest u: w = 0
    [[nodiscard]] double least(double u) const {
        return odd_ ? (1 + std::cos(u)) / 2 : std::cos(u);
    }
    [[nodiscard]] double most(double u) const {
        return odd_ ? std::cos(std::max(0.0, u - sharp_ / 2)) : 1;
    }
    [[nodiscard]] double ratio(double u) const { return most(u) / least(u); }

    // A narrow bracket of the u at which most is `ratio` times least; an end of the whole interval
    // where that is out of reach.
    [[nodiscard]] std::pair<double, double> bracket(double wanted) const {
        constexpr int k_halvings = 80;
        double lo = 0;
        double hi = sharp_;
        if (wanted <= ratio(lo))
            return {lo, lo};
        if (wanted >= ratio(hi))
            return {hi, hi};
        for (int i = 0; i < k_halvings; ++i) {
            const double middle = (lo + hi) / 2;
            (ratio(middle) <= wanted ? lo : hi) = middle;
        }
        return {lo, hi};
    }

  private:
    bool odd_;
    double sharp_;
};

// The error of a ratio of doubles, generously.
constexpr double k_ratio_error = 1e-15;

void refuse_jaws(const JawReadings& readings) {
    refuse_flutes(readings.flutes);
    if (!readings.least && !readings.most)
        throw error::BadData("no reading between the jaws",
                             "the smallest, the largest, or both, as the tool is turned");
    if (readings.flutes == 2 && readings.least)
        throw error::BadData("the smallest reading of two flutes is of the web, not of the lands",
                             "give the largest reading: it is the diameter");
}

// The smallest in the largest goes from once, of a full circle, to the ratio of sharp lands.
void refuse_pair(const JawReadings& readings, const Shares& shares, length::Unit unit) {
    const double sharp = shares.ratio(shares.sharp());
    const bool under = readings.most->hi < readings.least->lo;
    const bool over =
        as_number(readings.most->lo) > as_number(readings.least->hi) * sharp * (1 + k_ratio_error);
    if (!under && !over)
        return;
    const Range possible =
        outward(as_number(readings.least->lo), as_number(readings.least->hi) * sharp);
    const std::string wrong =
        under ? "under the smallest"
              : fmt::format("too far over the smallest of {} flutes", readings.flutes);
    throw error::BadData(
        fmt::format("the largest reading is {}, {}: {}", wrong, say(*readings.least, unit),
                    say(*readings.most, unit)),
        fmt::format("the largest is 1 to {:.4f} times the smallest, here {}; turn the tool slowly "
                    "and read both again",
                    sharp, say(possible, unit)));
}

struct Solved {
    double u_lo;
    double u_hi;
    Range diameter;
};

// With a reading missing, any u may be.
Solved solve(const JawReadings& readings, const Shares& shares) {
    Solved solved{0, shares.sharp(), {}};
    if (readings.least && readings.most) {
        const double least_ratio = as_number(readings.most->lo) / as_number(readings.least->hi);
        const double most_ratio = as_number(readings.most->hi) / as_number(readings.least->lo);
        solved.u_lo = shares.bracket(least_ratio * (1 - k_ratio_error)).first;
        solved.u_hi = shares.bracket(most_ratio * (1 + k_ratio_error)).second;
    }
    double lo = 0;
    double hi = HUGE_VAL;
    if (readings.least) {
        lo = as_number(readings.least->lo) / shares.least(solved.u_lo);
        hi = as_number(readings.least->hi) / shares.least(solved.u_hi);
    }
    if (readings.most) {
        lo = std::max(lo, as_number(readings.most->lo) / shares.most(solved.u_lo));
        hi = std::min(hi, as_number(readings.most->hi) / shares.most(solved.u_hi));
    }
    solved.diameter = outward(lo, hi);
    return solved;
}

std::string formula_of(const JawReadings& readings, const Shares& shares) {
    const char* least = shares.odd() ? "smallest = D/2 x (1 + cos(180/flutes - land angle/2))"
                                     : "smallest = D x cos(180/flutes - land angle/2)";
    const char* most = shares.odd() ? "largest = D x cos(90/flutes - land angle/2), or D where "
                                      "that angle is negative"
                                    : "largest = D";
    const std::string any = ", land angle 0 to 360/flutes";
    if (readings.least && readings.most)
        return fmt::format("{}; {}; solved together", least, most);
    return readings.least ? least + any : most + (shares.odd() ? any : std::string());
}

std::vector<Input> inputs_of(const JawReadings& readings) {
    std::vector<Input> inputs = {flutes_input(readings.flutes)};
    if (readings.least)
        inputs.push_back({"smallest", *readings.least});
    if (readings.most)
        inputs.push_back({"largest", *readings.most});
    return inputs;
}

void add_land(Gauged& gauged, const Solved& solved, const Shares& shares,
              const std::vector<Input>& inputs) {
    const double lo = std::max(0.0, degrees(2 * (shares.sharp() - solved.u_hi)));
    const double hi = degrees(2 * (shares.sharp() - solved.u_lo));
    gauged.figures.push_back({"land angle", Measure{Kind::angle, lo, hi},
                              "the land angle at which both readings have one diameter", inputs,
                              k_tips_source});
}

double width(const Range& range) {
    return as_number(range.hi - range.lo);
}

void add_amplification(Gauged& gauged, const JawReadings& readings, const Range& diameter) {
    const double widest = std::max(width(*readings.least), width(*readings.most));
    if (!(widest > 0))
        return;
    const double times = width(diameter) / widest;
    gauged.figures.push_back(
        amplification_figure(times, "width of the diameter's range / that of the wider reading"));
    constexpr double k_much = 3;
    if (times > k_much)
        gauged.notes.emplace_back(
            "the two readings hardly tell the land angle from the diameter; a chord "
            "from corner to corner tells more");
}

} // namespace

Gauged gauge_jaws(const JawReadings& readings, length::Unit unit) {
    refuse_jaws(readings);
    const Shares shares(readings.flutes);
    const bool both = readings.least && readings.most;
    if (both)
        refuse_pair(readings, shares, unit);
    const Solved solved = solve(readings, shares);
    const auto inputs = inputs_of(readings);
    Gauged gauged;
    gauged.diameter = solved.diameter;
    gauged.figures.push_back(
        diameter_figure(solved.diameter, formula_of(readings, shares), inputs));
    if (both) {
        add_land(gauged, solved, shares, inputs);
        add_amplification(gauged, readings, solved.diameter);
    } else if (readings.least || shares.odd()) {
        gauged.notes.emplace_back(
            "one reading gives bounds only: the upper is for sharp lands, and the wider the lands "
            "the smaller the diameter; give both readings, or a chord");
    } else {
        gauged.figures.push_back(amplification_figure(1, "largest = D"));
    }
    return gauged;
}

} // namespace job
