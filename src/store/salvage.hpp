// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Reading a damaged catalogue as far as SQLite can read it: each table from the front, from the
// back, and row by row in between.
#pragma once

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "store/replay.hpp"

namespace store {

// The keys, in order, of rows that can be read; of a table whose key is one whole number.
struct SalvagedIds {
    std::set<std::int64_t> ids;
    bool end_known = false; // the last row is among them
    bool all = false;       // every row is
};
[[nodiscard]] SalvagedIds readable_ids(SQLite::Database& database, const std::string& table,
                                       const std::string& key);

// The history of a damaged file.
struct SalvagedHistory {
    std::vector<std::int64_t> good;      // entries that fit their sums, in order
    std::map<std::int64_t, RowName> bad; // entries that do not, and the rows they name
    std::int64_t newest_lost = 0;        // of those between and before: 0 if none is missing
    std::size_t lost = 0;                // how many are missing
    bool end_known = false;              // none is missing after the last
    Replay replay;                       // of the good ones

    [[nodiscard]] bool whole() const {
        return end_known && bad.empty() && lost == 0 && replay.complaints().empty();
    }
};

[[nodiscard]] SalvagedHistory salvage_history(SQLite::Database& database);

// Rows by key, as the triggers write them. `known` are keys to ask for one by one where a table
// cannot be read from end to end.
struct SalvagedRows {
    std::map<std::string, std::string> rows;
    bool to_the_end = false; // every row is among them
};
[[nodiscard]] SalvagedRows salvage_rows(SQLite::Database& database, const std::string& table,
                                        const std::set<std::string>& known);

} // namespace store
