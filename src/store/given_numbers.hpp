// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The numbers that a catalogue gave to tools. A number is never given twice, also where another
// file takes the catalogue's place.
#pragma once

#include <cstdint>
#include <map>
#include <string>

namespace SQLite {
class Database;
}

namespace store {

struct GivenNumbers {
    std::map<std::int64_t, std::string> kinds; // number to `body` or `pilot`
    bool all = true;                           // false: some may be missing
};

// As far as they can be read: from the table of numbers, and from the history.
[[nodiscard]] GivenNumbers given_numbers(SQLite::Database& database);

// Marks them as given out in another file; returns those that were not yet.
GivenNumbers keep_given_numbers(SQLite::Database& database, const GivenNumbers& numbers);

} // namespace store
