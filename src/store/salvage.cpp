// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/salvage.hpp"

#include <fmt/format.h>

#include <functional>
#include <optional>

#include "error/error.hpp"
#include "store/kept_table.hpp"
#include "store/query.hpp"

namespace store {

namespace {

// So many rows are asked for one by one before it is believed that no more come.
constexpr std::int64_t k_longest_gap = 2000;

// False if it cannot be read.
bool readable(const std::function<void()>& act) {
    try {
        act();
        return true;
    } catch (const error::DamagedFile&) {
        return false;
    } catch (const error::InputOutput&) {
        return false;
    }
}

// False if the table could not be read to the end.
bool read_ids(SQLite::Database& database, const std::string& sql, std::set<std::int64_t>& ids) {
    return readable([&] {
        Query query(database, sql);
        while (query.step())
            if (!ids.insert(query.integer()).second)
                return; // met what was read from the other side, or went in a circle
    });
}

bool has_row(SQLite::Database& database, const std::string& sql, std::int64_t id) {
    bool there = false;
    readable([&] {
        Query query(database, sql);
        query.put(id);
        there = query.step();
    });
    return there;
}

// Between the part read from the front and the part read from the back, and after both.
void probe(SQLite::Database& database, const std::string& sql, std::int64_t from,
           std::set<std::int64_t>& ids) {
    std::int64_t missed = 0;
    for (std::int64_t id = from + 1; missed < k_longest_gap; ++id) {
        const auto next = ids.lower_bound(id);
        const bool there = next != ids.end() && *next == id;
        if (there || has_row(database, sql, id)) {
            ids.insert(id);
            missed = 0;
        } else if (++missed == k_longest_gap && next != ids.end()) {
            id = *next - 1;
            missed = 0;
        }
    }
}

} // namespace

SalvagedIds readable_ids(SQLite::Database& database, const std::string& table,
                         const std::string& key) {
    std::set<std::int64_t> ids;
    // All columns, lest an index is read instead.
    const std::string all = fmt::format("SELECT {1}, * FROM {0}", table, key);
    if (read_ids(database, fmt::format("{} ORDER BY {}", all, key), ids))
        return {std::move(ids), true, true};
    const std::size_t from_front = ids.size();
    const std::int64_t front = ids.empty() ? 0 : *ids.rbegin();
    read_ids(database, fmt::format("{} ORDER BY {} DESC", all, key), ids);
    const bool end_known = ids.size() > from_front;
    probe(database, fmt::format("{} WHERE {} = ?1", all, key), front, ids);
    return {std::move(ids), end_known, false};
}

SalvagedHistory salvage_history(SQLite::Database& database) {
    SalvagedHistory history;
    std::int64_t start = 0;
    readable([&] { start = replay_start(database); });
    std::int64_t last = 0;
    const SalvagedIds found_ids = readable_ids(database, "history", "id");
    history.end_known = found_ids.end_known;
    for (const std::int64_t id : found_ids.ids) {
        std::optional<Entry> found;
        if (!readable([&] { found = entry(database, id); }) || !found)
            continue;
        if (id > last + 1) {
            history.lost += static_cast<std::size_t>(id - last - 1);
            history.newest_lost = id - 1;
        }
        last = id;
        if (fits_its_sum(*found)) {
            history.good.push_back(id);
            history.replay.add(*found, start);
        } else {
            history.bad[id] = {found->table, found->key};
        }
    }
    return history;
}

SalvagedRows salvage_rows(SQLite::Database& database, const std::string& table,
                          const std::set<std::string>& known) {
    SalvagedRows found;
    std::optional<KeptTable> kept;
    if (!readable([&] { kept.emplace(database, table); }))
        return found;
    const auto see = [&found](const std::string& key, const std::string& row) {
        found.rows.try_emplace(key, row);
    };
    found.to_the_end = readable([&] { kept->each(see); });
    if (found.to_the_end)
        return found;
    readable([&] { kept->each_backwards(see); });
    for (const std::string& key : known)
        readable([&] {
            if (const auto row = found.rows.contains(key) ? std::nullopt : kept->row(key))
                found.rows.emplace(key, *row);
        });
    return found;
}

} // namespace store
