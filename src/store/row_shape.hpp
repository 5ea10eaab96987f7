// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a row of each table looks like on its page, so that a row can be told to be one of it.
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <optional>
#include <string>
#include <vector>

#include "store/pages.hpp"

namespace store {

class RowShape {
  public:
    RowShape(SQLite::Database& database, std::string table);

    [[nodiscard]] const std::string& table() const { return table_; }

    // Whether it could be a row of this table. No two tables have rows that could be both's, but
    // for those of tables without row ids.
    [[nodiscard]] bool fits(const PageRow& row) const;

    // A cell for every column, as declared.
    [[nodiscard]] std::vector<Cell> values(const PageRow& row) const;

    // `counterpart_key(?1), counterpart_row('number', ?1, ...)` of the values.
    [[nodiscard]] std::string key_and_row() const;

  private:
    struct Column {
        std::string name;
        bool whole = false; // a whole number, else text
        bool must = false;  // be there
    };
    [[nodiscard]] bool fits(const Column& column, const Cell& cell) const;

    std::string table_;
    std::vector<Column> columns_;
    std::vector<std::size_t> key_;
    bool by_id_ = true;
    std::optional<std::size_t> id_; // the column that is the row id
};

// Of every table of `database`.
[[nodiscard]] std::vector<RowShape> row_shapes(SQLite::Database& database);

} // namespace store
