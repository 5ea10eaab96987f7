// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Records as rows of CSV, in the columns that `import` reads.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "cli/format.hpp"
#include "cli/record/records.hpp"

namespace cli::transfer {

using SeeCells = std::function<void(std::vector<std::string> cells)>;

// Shows the header, then a row a record.
template <class Record>
void each_row(const std::vector<Record>& records, const record::Columns<Record>& columns,
              length::Unit stored, const SeeCells& see) {
    see(record::names_of(columns));
    for (const Record& record : records)
        see(record::cells_of(record, columns, stored));
}

// The same, printed.
template <class Record>
void print_rows(const std::vector<Record>& records, const record::Columns<Record>& columns,
                length::Unit stored, const Context& context) {
    each_row(records, columns, stored, [&context](std::vector<std::string> cells) {
        print_csv_row(std::move(cells), context);
    });
}

} // namespace cli::transfer
