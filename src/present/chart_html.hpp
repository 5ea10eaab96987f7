// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A chart to print and hang on the wall: black on white, read from two steps away.
#pragma once

#include <string>
#include <vector>

#include "match/chart.hpp"
#include "present/html.hpp"

namespace present {

// One HTML file that is valid XML too, in one piece, on A4 or Letter paper upright. A block of at
// most four series a table; `place` of a body stands under its number.
[[nodiscard]] std::string chart_html(const std::vector<match::ChartEntry>& entries, Paper paper);

} // namespace present
