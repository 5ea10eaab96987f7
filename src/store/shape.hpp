// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Whether a file's tables, indexes and triggers are those that the steps make for its
// version.
#pragma once

#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace store {

// Names of what is missing, changed or not ours, such as `trigger body_insert`; in order.
[[nodiscard]] std::vector<std::string> foreign_objects(SQLite::Database& database);

} // namespace store
