// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Everything that can be read of a damaged catalogue, poured into a database of its own without
// keys or rules, from which the right rows are chosen.
#pragma once

#include <cstdint>
#include <filesystem>
#include <set>
#include <string>

#include "store/connection.hpp"

namespace store {

// Its tables: `history`, as the catalogue's but with `sound` (fits its sum and its place, as far as
// these are known); `found` with the rows of all others: tbl, rowkey, row (as the triggers write
// them) and stray (from a page that no table led to), the first found first.
struct Loose {
    Connection connection;
    std::set<std::string> broken; // tables that could not be read to the end
    std::int64_t last_entry = 0;  // that the history or its chain has; the entries begin with 1
    bool end_known = false;       // none is missing after it
};

// `fresh` is a catalogue with the tables of the damaged one's version. Throws error::InputOutput.
[[nodiscard]] Loose pour(const std::filesystem::path& damaged, SQLite::Database& fresh);

} // namespace store
