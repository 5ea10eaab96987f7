// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Which catalogue a file is a state of. The identity is made with the catalogue and goes into every
// copy, so two files that have it in common began as one; whether one is an earlier state of the
// other, their lists of changes say.
#pragma once

#include <optional>
#include <string>

namespace SQLite {
class Database;
}

namespace store {

// 32 hexadecimal digits; empty where none can be read: a file of before version 8, or a damaged
// one.
[[nodiscard]] std::optional<std::string> identity_of(SQLite::Database& database);

// Makes the file a state of another catalogue. It must be of version 8 or later.
void set_identity(SQLite::Database& database, const std::string& identity);

// The same catalogue, and every change in `copy` is in `catalogue` too: its newest one is. False
// where that cannot be read.
[[nodiscard]] bool is_earlier_state(SQLite::Database& copy, SQLite::Database& catalogue);

} // namespace store
