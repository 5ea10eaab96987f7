// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/chain.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include "error/error.hpp"
#include "store/query.hpp"
#include "store/session.hpp"
#include "store/statements.hpp"

namespace store {

namespace {

constexpr auto k_has_chain = R"(
SELECT count(*) FROM pragma_table_xinfo('history_chain'))";

constexpr auto k_end = R"(
SELECT coalesce(max(entry), 0) FROM history_chain)";

constexpr auto k_place = R"(
SELECT sum FROM history_chain WHERE entry = ?1 ORDER BY entry)";

constexpr auto k_put = R"(
INSERT INTO history_chain (entry, sum) VALUES (?1, ?2))";

constexpr auto k_new_entries = R"(
SELECT id, grp, tbl, rowkey, number, before, NULL, digest, NULL
FROM history WHERE id > ?1 ORDER BY id)";

constexpr auto k_newest_of_tool = R"(
SELECT after IS ?4 FROM history
WHERE number = ?1 AND tbl = ?2 AND rowkey = ?3 AND id < ?5 ORDER BY id DESC LIMIT 1)";

// As the index history_row has it.
constexpr auto k_newest_of_row = R"(
SELECT after IS ?4 FROM history
WHERE ?1 IS NULL AND number IS NULL AND tbl <> 'change_group' AND tbl = ?2 AND rowkey = ?3
    AND id < ?5 ORDER BY id DESC LIMIT 1)";

// `body 7`, `work [7,1] of tool 7`, `house [3]`.
std::string row_name(const Entry& entry) {
    if (!entry.number)
        return fmt::format("{} {}", entry.table, entry.key);
    if (entry.table == "body" || entry.table == "pilot")
        return fmt::format("{} {}", entry.table, *entry.number);
    return fmt::format("{} {} of tool {}", entry.table, entry.key, *entry.number);
}

void refuse_unlike_newest(const Entry& entry, SQLite::Database& database, Statements& statements) {
    Query newest(statements, entry.number ? k_newest_of_tool : k_newest_of_row);
    newest.put(entry.number).put(entry.table).put(entry.key).put(entry.before).put(entry.id);
    if (!newest.step() || newest.integer() == 0)
        throw error::DamagedFile(
            fmt::format("the catalogue is damaged ({} is not as it was written): {}",
                        row_name(entry), database.getFilename()),
            "nothing was changed; `counterpart check` says more, `counterpart recover` mends it");
}

std::optional<std::string> place_at(SQLite::Database& database, std::int64_t entry) {
    Query query(database, k_place);
    query.put(entry);
    return query.step() ? std::optional(query.text()) : std::nullopt;
}

} // namespace

bool has_chain(SQLite::Database& database) {
    return integer_from(database, k_has_chain) > 0;
}

std::int64_t chain_end(SQLite::Database& database) {
    return has_chain(database) ? integer_from(database, k_end) : 0;
}

std::string place_of(const Entry& entry, const std::optional<std::string>& former) {
    Digest digest;
    digest.add(former);
    digest.add(std::to_string(entry.id));
    digest.add(std::to_string(entry.group));
    digest.add(entry.number ? std::optional(std::to_string(*entry.number)) : std::nullopt);
    digest.add(entry.digest);
    return fmt::format("{:016x}", digest.value());
}

void refuse_bad_place(const Entry& entry, SQLite::Database& database) {
    refuse_bad_sum(entry, database);
    if (entry.place != place_of(entry, place_at(database, entry.id - 1)))
        throw_bad(entry, "place", database);
}

void chain_entries(SQLite::Database& database, Rows rows) {
    if (!has_chain(database))
        return;
    Statements statements(database);
    const std::int64_t end = chain_end(database);
    std::optional<std::string> place = place_at(database, end);
    Query entries(database, k_new_entries);
    entries.put(end);
    Query put(database, k_put);
    while (entries.step()) {
        const Entry entry = take_entry(entries);
        if (rows == Rows::held && entry.before)
            refuse_unlike_newest(entry, database, statements);
        place = place_of(entry, place);
        put.put(entry.id).put(*place).run();
    }
}

} // namespace store
