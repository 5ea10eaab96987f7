// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The history as it is read. It is written by the schema's triggers.
#include "store/history.hpp"

#include "store/query.hpp"
#include "store/replay.hpp"

namespace store {

namespace {

// A trial is about a pilot (its number) and a body (the second part of its key). A null parameter
// gives everything.
constexpr auto k_rows = R"(
SELECT history.id, grp, tbl, rowkey, number, before, after, digest, NULL, at, words, undoes
FROM history JOIN change_group ON change_group.id = grp
WHERE snapshot = 0 AND tbl <> 'change_group'
    AND (?1 IS NULL OR number = ?1 OR (tbl = 'trial' AND rowkey ->> 1 = ?1))
ORDER BY history.id)";

} // namespace

void each_history_row(const File& file, std::optional<std::int64_t> number,
                      const std::function<void(const HistoryRow&)>& see) {
    Query query(file.database(), k_rows);
    query.put(number);
    while (query.step()) {
        Entry entry = take_entry(query);
        refuse_bad_sum(entry, file.database());
        HistoryRow row;
        row.group = entry.group;
        row.time = query.text();
        row.words = query.text();
        row.undoes = query.maybe_integer();
        row.table = std::move(entry.table);
        row.number = entry.number;
        row.before = std::move(entry.before).value_or("");
        row.after = std::move(entry.after).value_or("");
        see(row);
    }
}

std::vector<HistoryRow> history(const File& file, std::optional<std::int64_t> number) {
    std::vector<HistoryRow> rows;
    each_history_row(file, number, [&rows](const HistoryRow& row) { rows.push_back(row); });
    return rows;
}

} // namespace store
