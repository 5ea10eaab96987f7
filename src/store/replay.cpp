// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/replay.hpp"

#include <fmt/format.h>

#include <functional>

#include "store/kept_table.hpp"
#include "store/query.hpp"
#include "store/session.hpp"

namespace store {

namespace {

constexpr auto k_start = R"(
SELECT coalesce(min(id), 0) FROM history
WHERE grp = (SELECT max(id) FROM change_group WHERE snapshot = 1))";

} // namespace

Entry take_entry(Query& query) {
    Entry entry;
    entry.id = query.integer();
    entry.group = query.integer();
    entry.table = query.text();
    entry.key = query.text();
    entry.number = query.maybe_integer();
    entry.before = query.maybe_text();
    entry.after = query.maybe_text();
    entry.digest = query.text();
    return entry;
}

std::optional<Entry> entry(SQLite::Database& database, std::int64_t id) {
    Query query(database, fmt::format("SELECT {} FROM history WHERE id = ?1", k_entry_columns));
    query.put(id);
    return query.step() ? std::optional(take_entry(query)) : std::nullopt;
}

std::int64_t replay_start(SQLite::Database& database) {
    return integer_from(database, k_start);
}

bool fits_its_sum(const Entry& entry) {
    Digest digest;
    digest.add(entry.table);
    digest.add(entry.key);
    digest.add(entry.before);
    digest.add(entry.after);
    return fmt::format("{:016x}", digest.value()) == entry.digest;
}

std::size_t Replay::sum(const std::string& row) {
    return std::hash<std::string>()(row);
}

void Replay::add(const Entry& entry, std::int64_t start) {
    ++count_;
    const bool fits = fits_its_sum(entry);
    if (!fits)
        complaints_.push_back({Fault::sum, entry.id, 0});
    if (entry.id < start && entry.table != k_change_table)
        return;
    const auto sum_of = [](const std::optional<std::string>& row) {
        return row ? std::optional(sum(*row)) : std::nullopt;
    };
    Told& told = rows_[{entry.table, entry.key}];
    if (told.sum != sum_of(entry.before))
        complaints_.push_back({Fault::order, entry.id, told.entry});
    told = {entry.id, sum_of(entry.after), fits};
}

} // namespace store
