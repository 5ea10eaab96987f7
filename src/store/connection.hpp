// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Opening SQLite on a file that is, or is to be, a catalogue: what is refused, and the settings
// that every connection has. Nothing is written before the file is known to be a catalogue.
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>

#include "store/session.hpp"
#include "store/statements.hpp"

namespace SQLite {
class Database;
}

namespace store {

enum class Access;

// `CPRT`: what `file` and SQLite's header show a catalogue by.
inline constexpr std::int32_t k_application_id = 0x43505254;

// A connection with the session that its functions ask.
struct Connection {
    std::unique_ptr<Session> session;
    std::unique_ptr<SQLite::Database> database; // closed before the session goes
    std::unique_ptr<Statements> statements = nullptr;
};

// Opens an existing file. Throws error::NoSuchRecord, DamagedFile or InputOutput for what is no
// catalogue or may not be used so; the file is then untouched.
[[nodiscard]] Connection connect(const std::filesystem::path& path, Access access,
                                 std::chrono::milliseconds busy_timeout);

// Whatever a file asks for, no cell of it takes more memory than this; in bytes. A row of the
// history is the longest that the program itself writes.
inline constexpr int k_longest_cell_read = 16 * 1024 * 1024;

// What holds for a file that anyone may have made: no long cell is read, and nothing that stands in
// its schema has rights of its own.
void distrust(SQLite::Database& database);

// Opens an empty file to be made a catalogue, without any check.
[[nodiscard]] Connection connect_empty(const std::filesystem::path& path);

// Before anything is written: what is committed is on the disk. A file that another program turned
// to a write-ahead log is turned back, since a catalogue can be copied at rest; that writes to it,
// so first see that it is not to be refused. Throws error::Busy.
void use_rollback_journal(SQLite::Database& database, const std::filesystem::path& path);

} // namespace store
