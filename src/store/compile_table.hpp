// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One reference table from its CSV file into the database, when the program is built. The schema
// says how: a column whose name ends in _nm is a length, written under its name without _nm in the
// unit of the row (column `unit`); an empty cell is NULL where the column may be, else empty text.
#pragma once

#include <string>

#include "store/compile_csv.hpp"

namespace SQLite {
class Database;
}

namespace store {

// Throws error::BadData as `file:line: column: what is wrong: 'cell'`.
void fill_table(SQLite::Database& database, const std::string& table, const CsvFile& file);

// The rows that the other tables' columns point to are there. The tables are all filled.
void check_references(SQLite::Database& database, const std::string& table, const CsvFile& file);

} // namespace store
