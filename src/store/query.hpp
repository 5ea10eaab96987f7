// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One prepared statement. Parameters are bound and columns are read from left to right, so that a
// record's columns are listed once and in one order. SQLite's errors leave it translated.
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace store {

class Statements;

class Query {
  public:
    Query(SQLite::Database& database, const std::string& sql);
    // With a statement that is kept prepared, for what is done once a row.
    Query(Statements& statements, const std::string& sql);
    ~Query();
    Query(const Query&) = delete;
    Query& operator=(const Query&) = delete;

    // Binds the next parameter. Throws error::BadData for text that is not UTF-8 or has a zero
    // byte: the history could not keep it.
    Query& put(std::int64_t value);
    Query& put(std::string_view text);
    Query& put(const std::string& text) { return put(std::string_view(text)); }
    Query& put(const char* text) { return put(std::string_view(text)); }
    Query& put_null();
    // Text out of the file itself, which may be damaged.
    Query& put_as_is(const std::string& text);
    // The next column of another query's row, whatever it is.
    Query& put_value(Query& from);
    template <class Value>
    Query& put(const std::optional<Value>& value) {
        return value ? put(*value) : put_null();
    }

    // To the next row; false after the last.
    bool step();
    // Runs a statement that gives no rows and makes it ready to be bound again; returns the number
    // of rows it changed, triggers' rows not counted.
    int run();

    // Takes the next column of the row.
    bool is_null(); // looks, does not take
    std::int64_t integer();
    std::string text();
    std::optional<std::int64_t> maybe_integer();
    std::optional<std::string> maybe_text();
    [[nodiscard]] int columns() const { return statement_->getColumnCount(); }
    void skip(int columns) { column_ += columns; }

  private:
    SQLite::Database& database_;
    Statements* lender_ = nullptr;
    std::unique_ptr<SQLite::Statement> statement_;
    int parameter_ = 0;
    int column_ = 0;
};

// Runs statements that take no parameters.
void execute(SQLite::Database& database, const std::string& sql);

// The first column of the only row.
[[nodiscard]] std::int64_t integer_from(SQLite::Database& database, const std::string& sql);

} // namespace store
