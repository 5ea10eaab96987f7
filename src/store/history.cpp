// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The history as it is read. It is written by the schema's triggers.
#include "store/history.hpp"

#include "store/query.hpp"

namespace store {

namespace {

// A trial is about a pilot (its number) and a body (the second part of its key). A null parameter
// gives everything.
constexpr auto k_rows = R"(
SELECT grp, at, words, undoes, tbl, number, coalesce(before, ''), coalesce(after, '')
FROM history JOIN change_group ON change_group.id = grp
WHERE snapshot = 0 AND tbl <> 'change_group'
    AND (?1 IS NULL OR number = ?1 OR (tbl = 'trial' AND rowkey ->> 1 = ?1))
ORDER BY history.id)";

} // namespace

std::vector<HistoryRow> history(const File& file, std::optional<std::int64_t> number) {
    std::vector<HistoryRow> rows;
    Query query(file.database(), k_rows);
    query.put(number);
    while (query.step()) {
        HistoryRow& row = rows.emplace_back();
        row.group = query.integer();
        row.time = query.text();
        row.words = query.text();
        row.undoes = query.maybe_integer();
        row.table = query.text();
        row.number = query.maybe_integer();
        row.before = query.text();
        row.after = query.text();
    }
    return rows;
}

} // namespace store
