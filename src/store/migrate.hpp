// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Running the steps: all that are missing in one transaction, or none.
#pragma once

#include <filesystem>
#include <vector>

#include "store/migrations.hpp"

namespace SQLite {
class Database;
}

namespace store {

struct Session;

// Brings an open database from its user_version to the last step's: foreign keys off, one
// IMMEDIATE transaction with foreign_key_check, the new user_version and, unless the file was
// empty, a snapshot of every kept row for the history. A step that fails changes nothing. Throws
// error::DamagedFile naming the step. A step that changes rows of a kept table first drops the
// table's triggers, and makes them anew: the snapshot says what became of the rows.
void migrate(SQLite::Database& database, Session& session, const std::vector<Migration>& steps);

// Copies the database beside itself by SQLite's backup before a migration and compares the
// copy; returns its path: `catalogue.db.version-1`, or `.version-1.2` and so on if there is one.
std::filesystem::path back_up_beside(SQLite::Database& database, const std::filesystem::path& path);

// Checks, backs up and migrates a file that lacks steps; does nothing to one that has them all.
// Throws error::DamagedFile for one that is not whole: `recover` reads it as it is.
void bring_up_to_date(SQLite::Database& database, Session& session,
                      const std::filesystem::path& path, const std::vector<Migration>& steps);

} // namespace store
