// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Comma-separated values as RFC 4180 has them, in UTF-8: written with plain line ends and quotes
// only where they are needed, read with either line end.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
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

// The bytes of a file, part by part: gives up to `most`, and 0 at the end.
using CsvSource = std::function<std::size_t(char* to, std::size_t most)>;
[[nodiscard]] CsvSource csv_text(std::string_view text); // which must outlive it

// Reads a file row by row, holding no more of it than one row needs. A byte order mark is passed
// over. Reading goes on after a row with too few or too many cells, and stops at anything else: a
// byte that is not UTF-8, a NUL, a quote that is not closed or stands in the middle of a cell, a
// cell over k_longest_cell, no header.
class CsvReader {
  public:
    explicit CsvReader(CsvSource source);

    [[nodiscard]] const std::vector<std::string>& header() const { return header_; }
    // The next row that is neither empty nor ragged; empty after the last.
    std::optional<CsvRow> next();
    // What went wrong since last asked, in order. A file with problems is not to be used.
    std::vector<CsvProblem> take_problems();

  private:
    void read_more();
    bool needs_more();
    std::optional<std::vector<std::string>> read_row();
    std::vector<std::string> parse_row();
    void end_line();
    std::string plain();
    std::string quoted();
    [[nodiscard]] std::string shown(char first) const;
    void complain_of_byte();
    void stop(CsvProblem problem);

    CsvSource source_;
    std::string window_;
    std::size_t before_window_ = 0; // bytes of the file that are gone from the window
    std::size_t row_at_ = 0;        // where the row begins, in the window
    std::size_t at_ = 0;
    std::size_t end_ = 0;                 // of what can be read
    std::size_t bad_ = std::string::npos; // a byte that cannot be
    std::size_t row_ = 1;                 // where at_ is
    std::size_t column_ = 1;
    bool exhausted_ = false; // the window holds the end of the file
    bool short_ = false;     // the window ends within the row
    bool cut_off_ = false;   // a bad byte ends the row
    bool stopped_ = false;
    std::vector<std::string> header_;
    std::vector<CsvProblem> problems_;
};

// All of it at once.
[[nodiscard]] CsvFile read_csv(std::string_view text);
[[nodiscard]] CsvFile read_csv(CsvSource source);

} // namespace present
