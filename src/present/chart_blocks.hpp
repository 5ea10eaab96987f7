// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A chart as tables: a block for every form of head in inches, metric or BA; a column for every
// series, a row for every screw of it.
#pragma once

#include <string>
#include <vector>

#include "match/chart.hpp"

namespace present {

struct ChartBlock {
    struct Row {
        std::string label;                           // `5/16-18`, `1/4-20 close`
        std::vector<const match::ChartEntry*> cells; // one a column; nullptr: not in this series
    };
    std::string title;                // `socket head cap, inch`
    std::vector<std::string> columns; // series; `own` for measured heads
    std::vector<Row> rows;            // by diameter, pitch and hole
};

// The blocks point at `entries`. In the order in which their forms come; own screws last.
[[nodiscard]] std::vector<ChartBlock> chart_blocks(const std::vector<match::ChartEntry>& entries);

// `ready`, `after work`, `measure`, `make pilot`.
[[nodiscard]] std::string chart_word(match::AnswerKind kind);

// `ready 36`; empty where there is no answer.
[[nodiscard]] std::string chart_cell(const match::ChartEntry& entry);

} // namespace present
