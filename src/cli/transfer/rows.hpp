// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Records as rows of CSV, in the columns that `import` reads.
#pragma once

#include <string>
#include <vector>

#include "cli/record/records.hpp"

namespace cli::transfer {

// The header, then a row a record.
template <class Record>
std::vector<std::vector<std::string>> csv_rows(const std::vector<Record>& records,
                                               const record::Columns<Record>& columns,
                                               length::Unit stored) {
    std::vector<std::vector<std::string>> rows{record::names_of(columns)};
    for (const Record& record : records)
        rows.push_back(record::cells_of(record, columns, stored));
    return rows;
}

} // namespace cli::transfer
