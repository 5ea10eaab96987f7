// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Whether a file's tables, indexes and triggers are those that the steps make for its version. A
// stranger's file may have any others: a view in a table's place, a trigger that changes what it
// likes, a table that is no table.
#pragma once

#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace store {

// Names of what is missing, changed or not ours, such as `trigger body_insert`; in order.
[[nodiscard]] std::vector<std::string> foreign_objects(SQLite::Database& database);

// For reading: throws error::DamagedFile if anything that could be read is not a plain table.
// Triggers are not run by reading.
void refuse_views(SQLite::Database& database, const std::string& path);

// For writing: the same, also if there is a trigger or an index that no step makes. A further table
// does nothing by itself: `check` finds it.
void refuse_foreign_programs(SQLite::Database& database, const std::string& path);

} // namespace store
