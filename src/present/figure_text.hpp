// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Figures for a person: the one place where they are rounded and given the shop's unit.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "job/figure.hpp"
#include "length/length.hpp"

namespace present {

// A value with its unit, a range as `a to b unit`, or as one number when both ends print alike.
// Lengths to .0001 in or 0.001 mm; turns and pure numbers to four significant digits, the rest to
// three. Inch: in, sq in, ft/min, rpm, ft-lb (in-lb under 10 ft-lb), lbf, psi. Metric: mm, mm2,
// m/min, rpm, N m, N (kN from 10 kN), MPa. Either: deg; seconds, with minutes from two of them.
[[nodiscard]] std::string figure_value(const job::Value& value, length::Unit unit);

// How a figure's value is written.
using ValueText = std::string (*)(const job::Figure& figure, length::Unit unit);

// As a gauge reads it: figure_value.
[[nodiscard]] std::string gauge_value(const job::Figure& figure, length::Unit unit);

// As a machinist writes it on an operation sheet, by its grain: `.328 in (21/64)`, `360 to 580
// rpm`, `about 15 min`, `26 ft-lb`.
[[nodiscard]] std::string sheet_value(const job::Figure& figure, length::Unit unit);

// A line a figure, names and values in two columns, within `width` columns.
[[nodiscard]] std::string figure_lines(const std::vector<job::Figure>& figures, length::Unit unit,
                                       std::size_t width, ValueText text = gauge_value);

// The figure in one line, and under it the formula, what goes into it as it is reckoned with, and
// its source.
[[nodiscard]] std::string explain_figure(const job::Figure& figure, length::Unit unit,
                                         std::size_t width, ValueText text = gauge_value);

} // namespace present
