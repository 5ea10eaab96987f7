// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A write transaction, and the group of history rows that it opens.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace SQLite {
class Database;
}

namespace store {

struct Session;

// BEGIN IMMEDIATE, and back to how it was unless committed. Throws error::Busy.
class WriteTransaction {
  public:
    explicit WriteTransaction(SQLite::Database& database);
    ~WriteTransaction();
    WriteTransaction(const WriteTransaction&) = delete;
    WriteTransaction& operator=(const WriteTransaction&) = delete;

    void commit();

  private:
    SQLite::Database& database_;
    bool committed_ = false;
};

// Everything that is read while it lives is of one moment, and nobody's change is written
// meanwhile. Throws error::Busy.
class ReadTransaction {
  public:
    explicit ReadTransaction(SQLite::Database& database);
    ~ReadTransaction();
    ReadTransaction(const ReadTransaction&) = delete;
    ReadTransaction& operator=(const ReadTransaction&) = delete;

  private:
    SQLite::Database& database_;
};

struct GroupWords {
    std::string words;                  // what the user asked for
    std::optional<std::int64_t> undoes; // the group taken back
    bool snapshot = false;              // every row as it is, after a migration
};

// While it lives, the triggers' rows belong to one new group. Within a write transaction.
class OpenGroup {
  public:
    OpenGroup(SQLite::Database& database, Session& session);
    ~OpenGroup();
    OpenGroup(const OpenGroup&) = delete;
    OpenGroup& operator=(const OpenGroup&) = delete;

    // Writes the group's own row and chains its entries, if a row of it was written; nothing
    // otherwise. Throws error::DamagedFile if a row was not as its newest entry has it.
    void write(const GroupWords& words) const;

  private:
    SQLite::Database& database_;
    Session& session_;
};

// The entry in the history that keeps a change's own row.
void write_change_entry(SQLite::Database& database, std::int64_t group);

} // namespace store
