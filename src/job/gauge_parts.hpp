// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the ways of gauging share. Only src/job/gauge*.cpp include this.
#pragma once

#include <string>
#include <vector>

#include "job/figure.hpp"
#include "length/range.hpp"

namespace job {

inline constexpr const char* k_tips_source = "derived; geometry of n tips on a circle";

[[nodiscard]] double as_number(length::Length value); // nanometres
[[nodiscard]] double radians(double angle);
[[nodiscard]] double degrees(double angle);

// Whole nanometres, away from the middle; what is a whole number but for a millionth, which is the
// error of the arithmetic, stands.
[[nodiscard]] length::Range outward(double lo_nm, double hi_nm);

// Throws error::BadData.
void refuse_flutes(int flutes);

[[nodiscard]] Measure pure(double value);
[[nodiscard]] Input flutes_input(int flutes);

[[nodiscard]] Figure diameter_figure(const length::Range& diameter, std::string formula,
                                     std::vector<Input> inputs);

// How many times the error of the reading comes back in the diameter.
[[nodiscard]] Figure amplification_figure(double times, std::string formula);

} // namespace job
