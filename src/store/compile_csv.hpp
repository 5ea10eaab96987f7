// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Reading the reference tables' CSV files (RFC 4180) when the program is built.
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace store {

struct CsvRow {
    std::size_t line = 0; // where it starts, from 1
    std::vector<std::string> cells;
};

struct CsvFile {
    std::string name; // without folder, for messages
    std::vector<std::string> columns;
    std::vector<CsvRow> rows; // each with a cell for every column
};

// Throws error::BadData naming file and line for an open quote, text after a closing quote, a row
// with too few or too many cells, a column without a name or named twice, or no rows at all.
[[nodiscard]] CsvFile parse_csv(std::string_view text, std::string name);

// The same from a file. Throws error::InputOutput if it cannot be read.
[[nodiscard]] CsvFile read_csv(const std::filesystem::path& path);

// The whole of a file. Throws error::InputOutput.
[[nodiscard]] std::string read_text(const std::filesystem::path& path);

} // namespace store
