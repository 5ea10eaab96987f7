// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Taking back the newest change: its rows in reverse, each only if it is still as that change left
// it and its entry in the history is sound, as a new change of its own.
#include <fmt/format.h>

#include <map>
#include <vector>

#include "error/error.hpp"
#include "store/chain.hpp"
#include "store/change.hpp"
#include "store/history.hpp"
#include "store/kept_table.hpp"
#include "store/query.hpp"
#include "store/replay.hpp"

namespace store {

namespace {

// Groups from before a migration are in the shape of older tables.
constexpr auto k_newest = R"(
SELECT id, words, at FROM change_group
WHERE undoes IS NULL AND snapshot = 0
    AND id NOT IN (SELECT undoes FROM change_group WHERE undoes IS NOT NULL)
    AND id > (SELECT coalesce(max(id), 0) FROM change_group WHERE snapshot = 1)
ORDER BY id DESC LIMIT 1)";

constexpr auto k_of_group = R"(
WHERE grp = ?1 ORDER BY id DESC)";

constexpr auto k_by_id = R"(
WHERE id = ?1 ORDER BY id)";

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

std::vector<Entry> entries(SQLite::Database& database, const char* which, std::int64_t id) {
    std::vector<Entry> found;
    Query query(database, select_entries(database) + which);
    query.put(id);
    while (query.step()) {
        found.push_back(take_entry(query));
        refuse_bad_place(found.back(), database);
    }
    return found;
}

[[noreturn]] void throw_not_all(std::int64_t group, SQLite::Database& database) {
    throw error::DamagedFile(
        fmt::format("the catalogue is damaged (change {} has lost a part of its history): {}",
                    group, database.getFilename()),
        "nothing was taken back; `counterpart check` says more, `counterpart recover` mends it");
}

// All of a change, newest first: one after the other without a gap, the change's own entry last,
// and before them one of another change.
std::vector<Entry> entries_of(SQLite::Database& database, std::int64_t group) {
    std::vector<Entry> found = entries(database, k_of_group, group);
    if (found.empty() || found.front().table != k_change_table)
        throw_not_all(group, database);
    const std::int64_t first = found.back().id;
    for (std::size_t i = 0; i < found.size(); ++i)
        if (found[i].id != first + static_cast<std::int64_t>(found.size() - 1 - i))
            throw_not_all(group, database);
    if (first > 1 && entries(database, k_by_id, first - 1).empty())
        throw_not_all(group, database);
    found.erase(found.begin());
    return found;
}

void take_back(const KeptTable& table, const Entry& entry, SQLite::Database& database) {
    if (table.row(entry.key) != entry.after)
        throw error::DamagedFile(
            fmt::format("the catalogue is damaged ({} {} is not as it was written): {}",
                        entry.table, entry.key, database.getFilename()),
            "nothing was taken back; `counterpart check` says more, `counterpart recover` mends "
            "it");
    if (!entry.before)
        table.erase(entry.key);
    else if (!entry.after)
        table.insert(*entry.before);
    else
        table.update(entry.key, *entry.before);
}

} // namespace

Undone undo(File& file) {
    Change change(file, "undo");
    auto [group, undone] = newest_change(change.database());
    change.set_undoes(group, undone.words);

    // A pair may point both ways while its rows are put back one by one.
    execute(change.database(), "PRAGMA defer_foreign_keys = ON");
    std::map<std::string, KeptTable> tables;
    for (const Entry& entry : entries_of(change.database(), group)) {
        take_back(tables.try_emplace(entry.table, change.database(), entry.table).first->second,
                  entry, change.database());
        ++undone.rows;
    }
    change.commit();
    return undone;
}

} // namespace store
