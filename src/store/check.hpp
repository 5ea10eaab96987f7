// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Whether a catalogue is what was written to it: SQLite's own checks, the sums in the history, and
// the tables against the history from its last snapshot on. Finds accident, not intent.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "store/file.hpp"

namespace store {

// One thing that is not as it was written.
struct Finding {
    std::string what;                    // in words
    std::string table;                   // empty: the file as a whole
    std::string key;                     // of the row, as JSON
    std::optional<std::int64_t> number;  // of the tool, where it is one
    std::string column;                  // empty: the whole row
    std::optional<std::string> recorded; // what the history has; empty: nothing
    std::optional<std::string> found;    // what is there; empty: nothing
};

struct Checked {
    std::vector<Finding> findings;
    std::int64_t rows = 0;    // of kept tables
    std::int64_t entries = 0; // of the history

    [[nodiscard]] bool whole() const { return findings.empty(); }
};

// Reads everything, changes nothing. What cannot be read is a finding too. A file of an older
// version is held against the tables of that version.
[[nodiscard]] Checked check(const File& file);
[[nodiscard]] Checked check(SQLite::Database& database);

// Throws error::DamagedFile, with the first finding, unless the catalogue is whole.
Checked refuse_damaged(SQLite::Database& database, const std::string& path);

} // namespace store
