// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A table whose every change is in the history, as the history sees it: whole rows as JSON under
// a key. The statements are made from the table's own columns, so that a new column needs nothing
// here.
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace store {

// Their names, in an order in which rows can be put in.
[[nodiscard]] const std::vector<std::string>& kept_tables();

// The list of changes has an entry a change in the history too, so that `check` knows when and by
// what words a change was made; undo passes over it.
inline constexpr auto k_change_table = "change_group";

// Those of them that this file has: an older one lacks the newer.
[[nodiscard]] std::vector<std::string> kept_tables_of(SQLite::Database& database);

class KeptTable {
  public:
    // Throws error::DamagedFile if the history may not name this table.
    KeptTable(SQLite::Database& database, const std::string& name);
    // Of a table that the history does not keep, but whose rows were read as those of one.
    struct NotKept {};
    KeptTable(SQLite::Database& database, const std::string& name, NotKept);

    // The row as the triggers write it; empty if there is none. `key` is a JSON array.
    [[nodiscard]] std::optional<std::string> row(const std::string& key) const;

    // Shows every row with its key, as the triggers write them, by key.
    using See = std::function<void(const std::string& key, const std::string& row)>;
    void each(const See& see) const;

    void insert(const std::string& row) const;
    // The same, but pointing at no other row where it need not.
    void insert_alone(const std::string& row) const;
    void update(const std::string& key, const std::string& row) const;
    void erase(const std::string& key) const;

    // Writes every row into the history as of the change going on.
    void write_snapshot() const;

  private:
    [[nodiscard]] std::string row_as_json() const;
    [[nodiscard]] std::string where_key(std::string_view parameter) const;

    SQLite::Database& database_;
    void insert(const std::string& row, const std::vector<std::string>& left_out) const;

    std::string name_;
    std::vector<std::string> columns_; // as declared
    std::vector<std::string> key_;     // primary key, in its order
};

} // namespace store
