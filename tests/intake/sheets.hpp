// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The demo's sheets of bodies and pilots, and which of their columns each file of typed lines
// enters.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace sheets {

struct Sheet {
    std::vector<std::string> columns;
    std::vector<std::map<std::string, std::string>> rows; // column to cell
};

[[nodiscard]] std::string read_file(const std::filesystem::path& path);
[[nodiscard]] std::vector<std::string> lines_of(const std::string& text);
// Throws std::runtime_error for a file that is no such sheet.
[[nodiscard]] Sheet read_sheet(const std::filesystem::path& path);

// What decides fits and can be seen or measured in a moment: the columns of intake.txt, besides
// the number. intake-all.txt has them all.
[[nodiscard]] const std::vector<std::string>& quick_columns(bool pilots);

// Made by loading the demo's CSV files, or by anything else: exports both kinds with the program
// and says how they differ from the demo's sheets; empty when in nothing. Only in the quick columns
// (the others must be empty), or in all.
[[nodiscard]] std::string differences(const std::filesystem::path& program,
                                      const std::filesystem::path& catalogue,
                                      const std::filesystem::path& demo, bool quick);

} // namespace sheets
