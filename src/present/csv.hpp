// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Comma-separated values as RFC 4180 has them, in UTF-8: written with plain line ends and quotes
// only where they are needed, read with either line end.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace present {

// One row, with its line end.
[[nodiscard]] std::string csv_row(const std::vector<std::string>& cells);

// Where a file goes wrong. Rows and columns count from 1, the header being row 1, as a spreadsheet
// shows them.
struct CsvProblem {
    std::size_t row = 0;
    std::size_t column = 0; // 0: the row as a whole
    std::string what;       // `a quote is opened here and never closed`
    std::string cell;       // as far as there is one
    std::string meant;      // what would be right

    bool operator==(const CsvProblem&) const = default;
};

struct CsvRow {
    std::size_t row = 0;
    std::vector<std::string> cells; // as many as the header has
};

struct CsvFile {
    std::vector<std::string> header;
    std::vector<CsvRow> rows;         // without those that are empty or ragged
    std::vector<CsvProblem> problems; // in order; a file with problems is not to be used
};

inline constexpr std::size_t k_longest_cell = 1'000'000; // bytes

// Reads a whole file. A byte order mark is passed over. Reading goes on after a row with too few or
// too many cells, and stops at anything else: a byte that is not UTF-8, a NUL, a quote that is not
// closed or stands in the middle of a cell, a cell over k_longest_cell, no header.
[[nodiscard]] CsvFile read_csv(std::string_view text);

} // namespace present
