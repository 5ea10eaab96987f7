// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A copy of a whole catalogue, good before anyone hears of it.
#pragma once

#include <filesystem>

namespace SQLite {
class Database;
}

namespace store {

// Copies by SQLite's own backup into a file that is there and empty, puts it on the disk, and
// compares both byte for byte while nobody can write. Throws error::InputOutput if the copy is not
// the same, error::Busy.
void copy_database(SQLite::Database& original, const std::filesystem::path& copy);

// `2026-11-25-091241`, now, UTC: for the name of a copy.
[[nodiscard]] std::string date_for_a_name();

} // namespace store
