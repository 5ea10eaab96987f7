// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/row_shape.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <utility>

#include "store/query.hpp"
#include "store/utf8.hpp"

namespace store {

namespace {

constexpr auto k_tables = R"(
SELECT name FROM sqlite_schema
WHERE type = 'table' AND name NOT GLOB 'sqlite_*' ORDER BY name)";

constexpr auto k_without_id = R"(
SELECT wr FROM pragma_table_list WHERE name = ?1 AND schema = 'main' ORDER BY name)";

constexpr auto k_columns = R"(
SELECT name, type = 'INTEGER', "notnull", pk FROM pragma_table_xinfo(?1) ORDER BY cid)";

constexpr std::size_t k_digits_of_a_sum = 16;

// Tables of one number and one text, which only the text tells apart.
bool is_text_of(const std::string& table, const std::string& text) {
    if (table == "tool_number")
        return text == "body" || text == "pilot";
    if (table == "setting")
        return text == "in" || text == "mm";
    return table != "history_chain" || text.size() == k_digits_of_a_sum;
}

} // namespace

RowShape::RowShape(SQLite::Database& database, std::string table) : table_(std::move(table)) {
    Query without_id(database, k_without_id);
    without_id.put(table_);
    by_id_ = !without_id.step() || without_id.integer() == 0;
    Query query(database, k_columns);
    query.put(table_);
    while (query.step()) {
        Column& column = columns_.emplace_back();
        column.name = query.text();
        column.whole = query.integer() != 0;
        column.must = query.integer() != 0;
        if (query.integer() != 0)
            key_.push_back(columns_.size() - 1);
    }
    if (by_id_ && key_.size() == 1 && columns_[key_[0]].whole)
        id_ = key_[0];
}

bool RowShape::fits(const Column& column, const Cell& cell) const {
    if (const auto* text = std::get_if<std::string>(&cell))
        return !column.whole && is_utf8_without_zero(*text) &&
               (columns_.size() != 2 || is_text_of(table_, *text));
    return std::holds_alternative<std::monostate>(cell) ? !column.must : column.whole;
}

// A column that was added to the table later is not in older rows.
bool RowShape::fits(const PageRow& row) const {
    if (row.has_id != by_id_ || row.cells.empty() || row.cells.size() > columns_.size())
        return false;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const Cell cell = i < row.cells.size() ? row.cells[i] : Cell();
        if (i == id_ ? !std::holds_alternative<std::monostate>(cell) : !fits(columns_[i], cell))
            return false;
    }
    return true;
}

std::vector<Cell> RowShape::values(const PageRow& row) const {
    std::vector<Cell> all = row.cells;
    all.resize(columns_.size());
    if (id_)
        all[*id_] = row.id;
    return all;
}

std::string RowShape::key_and_row() const {
    std::vector<std::string> key;
    for (const std::size_t place : key_)
        key.push_back(fmt::format("?{}", place + 1));
    std::vector<std::string> pairs;
    for (std::size_t i = 0; i < columns_.size(); ++i)
        pairs.push_back(fmt::format("'{}', ?{}", columns_[i].name, i + 1));
    return fmt::format("counterpart_key({}), counterpart_row({})", fmt::join(key, ", "),
                       fmt::join(pairs, ", "));
}

std::vector<RowShape> row_shapes(SQLite::Database& database) {
    std::vector<std::string> names;
    Query query(database, k_tables);
    while (query.step())
        names.push_back(query.text());
    std::vector<RowShape> shapes;
    for (std::string& name : names)
        shapes.emplace_back(database, std::move(name));
    return shapes;
}

} // namespace store
