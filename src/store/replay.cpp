// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/replay.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <functional>

#include "error/error.hpp"
#include "store/chain.hpp"
#include "store/kept_table.hpp"
#include "store/query.hpp"
#include "store/session.hpp"

namespace store {

namespace {

constexpr auto k_entries = R"(
SELECT id, grp, tbl, rowkey, number, before, after, digest, NULL FROM history )";

constexpr auto k_chained_entries = R"(
SELECT id, grp, tbl, rowkey, number, before, after, digest, sum
FROM history LEFT JOIN history_chain ON entry = id )";

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
    entry.place = query.maybe_text();
    return entry;
}

std::string select_entries(SQLite::Database& database) {
    return has_chain(database) ? k_chained_entries : k_entries;
}

std::optional<Entry> entry(SQLite::Database& database, std::int64_t id) {
    Query query(database, std::string(k_entries) + "WHERE id = ?1 ORDER BY id");
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

void throw_bad(const Entry& entry, const char* what, SQLite::Database& database) {
    throw error::DamagedFile(
        fmt::format(
            "the catalogue is damaged (entry {} of the history, about {} {}, does not fit its "
            "{}): {}",
            entry.id, entry.table, entry.key, what, database.getFilename()),
        "`counterpart check` says more, `counterpart recover` mends it");
}

void refuse_bad_sum(const Entry& entry, SQLite::Database& database) {
    if (!fits_its_sum(entry))
        throw_bad(entry, "sum", database);
}

std::size_t Replay::sum(const std::string& row) {
    return std::hash<std::string>()(row);
}

// Nothing is asked of an entry whose former is missing: that is said of the missing one.
bool Replay::fits_place(const Entry& entry) {
    bool fits = true;
    if (!entry.place)
        fits = !chained_;
    else if (!chained_ || (place_ && entry.id == last_ + 1))
        fits = entry.place == place_of(entry, place_);
    chained_ = chained_ || entry.place;
    last_ = entry.id;
    place_ = entry.place;
    return fits;
}

void Replay::add(const Entry& entry, std::int64_t start) {
    ++count_;
    bool fits = fits_its_sum(entry);
    if (!fits)
        complaints_.push_back({Fault::sum, entry.id, 0});
    if (!fits_place(entry)) {
        complaints_.push_back({Fault::place, entry.id, 0});
        fits = false;
    }
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
