// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/salvage.hpp"

#include "store/query.hpp"

namespace store {

namespace {

constexpr auto k_start = R"(
SELECT coalesce(min(id), 0) FROM history WHERE grp = (
    SELECT max(grp) FROM (
        SELECT grp FROM history
        WHERE tbl = 'change_group' AND sound AND after ->> 'snapshot' = 1
        UNION ALL
        SELECT row ->> 'id' FROM found
        WHERE tbl = 'change_group' AND row ->> 'snapshot' = 1)))";

constexpr auto k_entries = R"(
SELECT id, grp, tbl, rowkey, number, before, after, digest, NULL, sound FROM history ORDER BY id)";

} // namespace

SalvagedHistory salvage_history(const Loose& loose) {
    SQLite::Database& database = *loose.connection.database;
    SalvagedHistory history;
    history.end_known = loose.end_known;
    const std::int64_t start = integer_from(database, k_start);
    const auto miss = [&history](std::int64_t first, std::int64_t last) {
        if (first > last)
            return;
        history.lost += last - first + 1;
        history.newest_lost = last;
    };
    std::int64_t former = 0;
    Query query(database, k_entries);
    while (query.step()) {
        const Entry entry = take_entry(query);
        miss(former + 1, entry.id - 1);
        former = entry.id;
        if (query.integer() != 0) {
            history.good.push_back(entry.id);
            history.replay.add(entry, start);
        } else {
            history.bad[entry.id] = {entry.table, entry.key};
        }
    }
    miss(former + 1, loose.last_entry);
    return history;
}

} // namespace store
