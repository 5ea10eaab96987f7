// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A chart for the terminal, and for programs.
#pragma once

#include <string>
#include <vector>

#include "match/chart.hpp"
#include "present/json.hpp"
#include "present/style.hpp"

namespace present {

// Within `width`, where a label and one column have room in it; wide blocks go on below.
[[nodiscard]] std::string chart_text(const std::vector<match::ChartEntry>& entries,
                                     const Style& style, std::size_t width);
[[nodiscard]] Json chart_json(const std::vector<match::ChartEntry>& entries);
// The first row is the header.
[[nodiscard]] std::vector<std::vector<std::string>>
chart_rows(const std::vector<match::ChartEntry>& entries);

// How many screws have each answer, in words: `21 ready, 4 after work, ..., 3 without`.
[[nodiscard]] std::string chart_counts(const std::vector<match::ChartEntry>& entries);

} // namespace present
