// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/loose.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "store/query.hpp"
#include "store/row_shape.hpp"
#include "store/settle.hpp"
#include "store/translate.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

constexpr auto k_make = R"(
PRAGMA journal_mode = OFF;
PRAGMA synchronous = OFF;
PRAGMA cache_size = -64000;
BEGIN;
CREATE TABLE history (id INTEGER PRIMARY KEY, grp, tbl, rowkey, number, before, after, digest, sound);
CREATE TABLE found (tbl, rowkey, row, stray))";

constexpr auto k_finish = R"(
CREATE INDEX found_row ON found (tbl, rowkey);
CREATE INDEX history_row ON history (tbl, rowkey);
COMMIT)";

constexpr auto k_put_entry = R"(
INSERT INTO history (id, grp, tbl, rowkey, number, before, after, digest, sound)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)
ON CONFLICT (id) DO UPDATE SET (grp, tbl, rowkey, number, before, after, digest, sound) =
    (excluded.grp, excluded.tbl, excluded.rowkey, excluded.number, excluded.before, excluded.after,
    excluded.digest, excluded.sound)
WHERE excluded.sound > sound)";

constexpr std::uint32_t k_schema_root = 1;
constexpr auto k_history = "history";
constexpr auto k_chain = "history_chain";

// Of these nothing is taken from stray pages: a name that was forgotten stays so.
bool may_be_forgotten(const std::string& table) {
    return table == "loan" || table == "closed_loan";
}

const std::string* text_in(const std::vector<Cell>& cells, std::size_t place) {
    return place < cells.size() ? std::get_if<std::string>(&cells[place]) : nullptr;
}

std::optional<std::string> maybe_text(const Cell& cell) {
    const auto* text = std::get_if<std::string>(&cell);
    return text == nullptr ? std::nullopt : std::optional(*text);
}

std::optional<std::int64_t> maybe_integer(const Cell& cell) {
    const auto* number = std::get_if<std::int64_t>(&cell);
    return number == nullptr ? std::nullopt : std::optional(*number);
}

// `cells` fit the shape of the history.
Entry entry_of(const std::vector<Cell>& cells) {
    Entry entry;
    entry.id = std::get<std::int64_t>(cells[0]);
    entry.group = std::get<std::int64_t>(cells[1]);
    entry.table = std::get<std::string>(cells[2]);
    entry.key = std::get<std::string>(cells[3]);
    entry.number = maybe_integer(cells[4]);
    entry.before = maybe_text(cells[5]);
    entry.after = maybe_text(cells[6]);
    entry.digest = std::get<std::string>(cells[7]);
    return entry;
}

void bind(Query& query, const Cell& cell) {
    if (const auto* text = std::get_if<std::string>(&cell))
        query.put_as_is(*text);
    else
        query.put(maybe_integer(cell));
}

class Pourer {
  public:
    Pourer(const fs::path& damaged, SQLite::Database& fresh, Loose& loose)
        : pages_(damaged), shapes_(row_shapes(fresh)), loose_(loose),
          database_(*loose.connection.database), put_entry_(database_, k_put_entry),
          settler_([this](const Entry& entry, bool sound) { put(entry, sound); }) {}

    // The chain comes first: the entries are held against it.
    void run() {
        find_roots();
        settler_.set_chain_whole(pour(k_chain));
        pour(k_history);
        for (const RowShape& shape : shapes_)
            if (shape.table() != k_chain && shape.table() != k_history)
                pour(shape.table());
        stray_ = true;
        pages_.stray([this](const PageRow& row) { return put(row, ""); });
        settler_.finish();
        loose_.last_entry = settler_.last();
        loose_.end_known = !loose_.broken.contains(k_history) || settler_.chain_whole();
    }

  private:
    // A row of the schema: type, name, table, root, SQL.
    void find_roots() {
        pages_.tree(k_schema_root, [this](const PageRow& row) {
            const auto* type = text_in(row.cells, 0);
            const auto* name = text_in(row.cells, 1);
            const auto root = row.cells.size() > 3 ? maybe_integer(row.cells[3]) : std::nullopt;
            if (type != nullptr && *type == "table" && name != nullptr && root)
                roots_[*name] = static_cast<std::uint32_t>(*root);
            return true;
        });
    }

    bool pour(const std::string& table) {
        const auto root = roots_.find(table);
        const bool whole =
            root != roots_.end() &&
            pages_.tree(root->second, [&](const PageRow& row) { return put(row, table); });
        if (!whole)
            loose_.broken.insert(table);
        return whole;
    }

    // The shape of the table where the row was found, or else the only one that it fits.
    const RowShape* shape_of(const PageRow& row, const std::string& table) const {
        const RowShape* found = nullptr;
        for (const RowShape& shape : shapes_) {
            if (!shape.fits(row))
                continue;
            if (shape.table() == table)
                return &shape;
            if (found != nullptr && table.empty())
                return nullptr;
            found = &shape;
        }
        return row.has_id ? found : nullptr;
    }

    bool put(const PageRow& row, const std::string& table) {
        const RowShape* shape = shape_of(row, table);
        if (shape == nullptr)
            return false;
        const std::vector<Cell> cells = shape->values(row);
        if (shape->table() == k_chain)
            settler_.add_place(row.id, std::get<std::string>(cells[1]));
        else if (shape->table() == k_history)
            settler_.take(entry_of(cells));
        else if (!stray_ || !may_be_forgotten(shape->table()))
            put(*shape, cells);
        return shape->table() == table;
    }

    void put(const RowShape& shape, const std::vector<Cell>& cells) {
        auto& query = puts_[shape.table()];
        if (!query)
            query = std::make_unique<Query>(
                database_,
                fmt::format("INSERT INTO found (tbl, rowkey, row, stray) VALUES ('{}', {}, ?{})",
                            shape.table(), shape.key_and_row(), cells.size() + 1));
        for (const Cell& cell : cells)
            bind(*query, cell);
        query->put(std::int64_t{stray_}).run();
    }

    void put(const Entry& entry, bool sound) {
        put_entry_.put(entry.id).put(entry.group).put_as_is(entry.table).put_as_is(entry.key);
        put_entry_.put(entry.number);
        for (const auto* row : {&entry.before, &entry.after})
            if (*row)
                put_entry_.put_as_is(**row);
            else
                put_entry_.put_null();
        put_entry_.put_as_is(entry.digest).put(std::int64_t{sound}).run();
    }

    Pages pages_;
    std::vector<RowShape> shapes_;
    Loose& loose_;
    SQLite::Database& database_;
    std::map<std::string, std::uint32_t> roots_;
    std::map<std::string, std::unique_ptr<Query>> puts_;
    Query put_entry_;
    Settler settler_;
    bool stray_ = false;
};

// A file without a name, in memory as long as it is small.
Connection open_empty() {
    Connection connection{std::make_unique<Session>(), nullptr};
    try {
        connection.database =
            std::make_unique<SQLite::Database>("", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    } catch (const SQLite::Exception& exception) {
        throw_translated(exception, "a temporary file");
    }
    register_functions(*connection.database, *connection.session);
    connection.statements = std::make_unique<Statements>(*connection.database);
    return connection;
}

} // namespace

Loose pour(const fs::path& damaged, SQLite::Database& fresh) {
    Loose loose;
    loose.connection = open_empty();
    execute(*loose.connection.database, k_make);
    Pourer(damaged, fresh, loose).run();
    execute(*loose.connection.database, k_finish);
    return loose;
}

} // namespace store
