// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the columns of a person's own file are called here: theirs to ours, as their map file says
// it and as the catalogue keeps it for the next file with the same header row.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace cli::transfer {

// The column that `import --rejects` adds: passed over when the file comes back.
inline constexpr std::string_view k_problem_column = "problem";

// Their name, folded, to ours; to nothing for a column that is left out.
using ColumnMap = std::map<std::string, std::string, std::less<>>;

// Reads a map file: CSV of two columns, theirs and ours, or lines `theirs = ours`; `-` or nothing
// for ours leaves a column out. `known` are our columns. Throws error::BadData, naming the line.
[[nodiscard]] ColumnMap read_column_map(const std::string& text,
                                        const std::vector<std::string>& known);

// Throws error::BadData for a map that speaks of columns that the file does not have.
void refuse_other_columns(const ColumnMap& map, const std::vector<std::string>& header);

// The header row as the catalogue knows it: folded, without the column of problems, as CSV.
[[nodiscard]] std::string header_key(const std::vector<std::string>& header);

// Ours in the order of that header row, as CSV, and back again.
[[nodiscard]] std::string ours_in_order(const ColumnMap& map,
                                        const std::vector<std::string>& header);
[[nodiscard]] ColumnMap map_from(const std::string& ours, const std::vector<std::string>& header);

// `'Cutter' is cut_dia, 'Colour' is left out`: columns under their own names are not told.
[[nodiscard]] std::string in_words(const ColumnMap& map, const std::vector<std::string>& header);

} // namespace cli::transfer
