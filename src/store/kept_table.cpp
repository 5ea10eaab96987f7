// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/kept_table.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

#include "error/error.hpp"
#include "store/query.hpp"

namespace store {

namespace {

constexpr auto k_columns = R"(
SELECT name FROM pragma_table_xinfo(?1) ORDER BY cid)";

constexpr auto k_key = R"(
SELECT name FROM pragma_table_xinfo(?1) WHERE pk > 0 ORDER BY pk)";

constexpr auto k_may_be_left_out = R"(
SELECT "from" FROM pragma_foreign_key_list(?1)
WHERE "from" IN (SELECT name FROM pragma_table_xinfo(?1) WHERE pk = 0 AND "notnull" = 0)
ORDER BY seq)";

std::vector<std::string> names(SQLite::Database& database, const char* sql,
                               const std::string& table) {
    Query query(database, sql);
    query.put(table);
    std::vector<std::string> found;
    while (query.step())
        found.push_back(query.text());
    return found;
}

} // namespace

const std::vector<std::string>& kept_tables() {
    static const std::vector<std::string> k_names = {
        "body",  "pilot",    "work",    "trial", "own_screw",
        "house", "practice", "machine", "stock", "column_map"};
    return k_names;
}

std::vector<std::string> kept_tables_of(SQLite::Database& database) {
    std::vector<std::string> there;
    for (const std::string& name : kept_tables())
        if (!names(database, k_columns, name).empty())
            there.push_back(name);
    return there;
}

KeptTable::KeptTable(SQLite::Database& database, const std::string& name, NotKept)
    : database_(database), name_(name), columns_(names(database, k_columns, name)),
      key_(names(database, k_key, name)) {}

KeptTable::KeptTable(SQLite::Database& database, const std::string& name)
    : KeptTable(database, name, NotKept()) {
    const auto& all = kept_tables();
    if (name != k_change_table && std::find(all.begin(), all.end(), name) == all.end())
        throw error::DamagedFile("the history names a table that is not kept: " + name,
                                 "keep the file as it is and go back to a copy");
}

std::string KeptTable::row_as_json() const {
    std::vector<std::string> pairs;
    for (const auto& column : columns_)
        pairs.push_back(fmt::format("'{0}', {0}", column));
    return fmt::format("counterpart_row({})", fmt::join(pairs, ", "));
}

std::string KeptTable::where_key(std::string_view parameter) const {
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < key_.size(); ++i)
        parts.push_back(fmt::format("{} = {} ->> {}", key_[i], parameter, i));
    return fmt::format("{}", fmt::join(parts, " AND "));
}

std::optional<std::string> KeptTable::row(const std::string& key) const {
    Query query(database_,
                fmt::format("SELECT {} FROM {} WHERE {}", row_as_json(), name_, where_key("?1")));
    query.put(key);
    return query.step() ? std::optional(query.text()) : std::nullopt;
}

void KeptTable::each(const See& see) const {
    Query query(database_, fmt::format("SELECT counterpart_key({0}), {1} FROM {2} ORDER BY {0}",
                                       fmt::join(key_, ", "), row_as_json(), name_));
    while (query.step()) {
        const std::string key = query.text();
        see(key, query.text());
    }
}

void KeptTable::insert(const std::string& row) const {
    insert(row, {});
}

void KeptTable::insert_alone(const std::string& row) const {
    insert(row, names(database_, k_may_be_left_out, name_));
}

void KeptTable::insert(const std::string& row, const std::vector<std::string>& left_out) const {
    std::vector<std::string> values;
    for (const auto& column : columns_)
        values.push_back(std::find(left_out.begin(), left_out.end(), column) == left_out.end()
                             ? fmt::format("?1 ->> '{}'", column)
                             : "NULL");
    Query(database_, fmt::format("INSERT INTO {} ({}) VALUES ({})", name_,
                                 fmt::join(columns_, ", "), fmt::join(values, ", ")))
        .put(row)
        .run();
}

void KeptTable::update(const std::string& key, const std::string& row) const {
    std::vector<std::string> values;
    for (const auto& column : columns_)
        values.push_back(fmt::format("{0} = ?2 ->> '{0}'", column));
    Query(database_,
          fmt::format("UPDATE {} SET {} WHERE {}", name_, fmt::join(values, ", "), where_key("?1")))
        .put(key)
        .put(row)
        .run();
}

void KeptTable::erase(const std::string& key) const {
    Query(database_, fmt::format("DELETE FROM {} WHERE {}", name_, where_key("?1"))).put(key).run();
}

void KeptTable::write_snapshot() const {
    const bool numbered = std::find(columns_.begin(), columns_.end(), "number") != columns_.end();
    execute(database_,
            fmt::format(R"(
INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
SELECT counterpart_group(), '{0}', rowkey, number, NULL, after,
    counterpart_digest('{0}', rowkey, NULL, after)
FROM (SELECT counterpart_key({1}) AS rowkey, {2} AS number, {3} AS after FROM {0} ORDER BY {1}))",
                        name_, fmt::join(key_, ", "), numbered ? "number" : "NULL", row_as_json()));
}

} // namespace store
