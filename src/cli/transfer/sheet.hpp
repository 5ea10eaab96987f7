// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A CSV file as rows of named cells.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/record/column.hpp"
#include "cli/transfer/column_map.hpp"
#include "cli/transfer/mistakes.hpp"
#include "present/csv.hpp"

namespace cli::transfer {

struct SheetRow {
    std::size_t row = 0;
    record::Cells cells;
};

// Column names as they are compared: `Cut dia` is `cut_dia`.
[[nodiscard]] std::string column_name(std::string_view cell);

// The header may name `known` columns, in any order, by their names in `map` or their own, and must
// name `required` (empty: none).
struct Header {
    std::vector<std::string> known;
    std::string required;
    ColumnMap map;
};

// Shows the rows one by one. What is wrong with the file or its header goes into `mistakes`.
using SeeRow = std::function<void(const SheetRow& row)>;
void read_sheet(present::CsvSource source, const Header& header, Mistakes& mistakes,
                const SeeRow& see);

// All rows at once, of a file that is small.
[[nodiscard]] std::vector<SheetRow> read_sheet(std::string_view text,
                                               const std::vector<std::string>& known,
                                               const std::string& required, Mistakes& mistakes,
                                               const ColumnMap& map = {});

} // namespace cli::transfer
