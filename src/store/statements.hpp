// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The statements of one connection that are used again and again, prepared once: preparing one that
// fires the history's triggers costs more than running it.
#pragma once

#include <map>
#include <memory>
#include <string>

namespace SQLite {
class Database;
class Statement;
} // namespace SQLite

namespace store {

// Lends each statement to one Query at a time; a second Query of the same text gets its own.
class Statements {
  public:
    // `database` must outlive it.
    explicit Statements(SQLite::Database& database);
    ~Statements();
    Statements(const Statements&) = delete;
    Statements& operator=(const Statements&) = delete;

    [[nodiscard]] SQLite::Database& database() const { return database_; }
    [[nodiscard]] std::unique_ptr<SQLite::Statement> take(const std::string& sql);
    void give_back(std::unique_ptr<SQLite::Statement> statement) noexcept;

  private:
    SQLite::Database& database_;
    std::map<std::string, std::unique_ptr<SQLite::Statement>> idle_; // empty: lent
};

// One lent statement, given back at the end.
class Lent {
  public:
    Lent(Statements& from, const std::string& sql) : from_(from), statement_(from.take(sql)) {}
    ~Lent();
    Lent(const Lent&) = delete;
    Lent& operator=(const Lent&) = delete;

    SQLite::Statement& operator*() { return *statement_; }

  private:
    Statements& from_;
    std::unique_ptr<SQLite::Statement> statement_;
};

} // namespace store
