// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Taking back the newest change: its rows in reverse, each only if it is still as that change left
// it, as a new change of its own.
#include <fmt/format.h>

#include <map>

#include "error/error.hpp"
#include "store/change.hpp"
#include "store/history.hpp"
#include "store/kept_table.hpp"
#include "store/query.hpp"

namespace store {

namespace {

// Groups from before a migration are in the shape of older tables.
constexpr auto k_newest = R"(
SELECT id, words, at FROM change_group
WHERE undoes IS NULL AND snapshot = 0
    AND id NOT IN (SELECT undoes FROM change_group WHERE undoes IS NOT NULL)
    AND id > (SELECT coalesce(max(id), 0) FROM change_group WHERE snapshot = 1)
ORDER BY id DESC LIMIT 1)";

constexpr auto k_rows = R"(
SELECT tbl, rowkey, before, after FROM history
WHERE grp = ?1 AND tbl <> 'change_group' ORDER BY id DESC)";

struct Row {
    std::string table;
    std::string key;
    std::optional<std::string> before;
    std::optional<std::string> after;
};

struct Newest {
    std::int64_t group = 0;
    Undone undone;
};

Newest newest_change(SQLite::Database& database) {
    Query query(database, k_newest);
    if (!query.step())
        throw error::NoSuchRecord("there is no change to take back",
                                  "`counterpart history` shows what was done");
    Newest newest;
    newest.group = query.integer();
    newest.undone.words = query.text();
    newest.undone.time = query.text();
    return newest;
}

std::vector<Row> rows_of(SQLite::Database& database, std::int64_t group) {
    std::vector<Row> rows;
    Query query(database, k_rows);
    query.put(group);
    while (query.step()) {
        Row& row = rows.emplace_back();
        row.table = query.text();
        row.key = query.text();
        row.before = query.maybe_text();
        row.after = query.maybe_text();
    }
    return rows;
}

void take_back(const KeptTable& table, const Row& row) {
    if (table.row(row.key) != row.after)
        throw error::BadData(
            fmt::format("a row is not as the change left it: {} {}", row.table, row.key),
            "nothing was taken back; see `counterpart history`");
    if (!row.before)
        table.erase(row.key);
    else if (!row.after)
        table.insert(*row.before);
    else
        table.update(row.key, *row.before);
}

} // namespace

Undone undo(File& file) {
    Change change(file, "undo");
    auto [group, undone] = newest_change(change.database());
    change.set_undoes(group, undone.words);

    // A pair may point both ways while its rows are put back one by one.
    execute(change.database(), "PRAGMA defer_foreign_keys = ON");
    std::map<std::string, KeptTable> tables;
    for (const Row& row : rows_of(change.database(), group)) {
        take_back(tables.try_emplace(row.table, change.database(), row.table).first->second, row);
        ++undone.rows;
    }
    change.commit();
    return undone;
}

} // namespace store
