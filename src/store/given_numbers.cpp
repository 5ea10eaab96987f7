// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/given_numbers.hpp"

#include "error/error.hpp"
#include "store/query.hpp"
#include "store/transaction.hpp"

namespace store {

namespace {

constexpr auto k_from_front = R"(
SELECT number, kind FROM tool_number ORDER BY number)";

constexpr auto k_from_back = R"(
SELECT number, kind FROM tool_number ORDER BY number DESC)";

constexpr auto k_in_history = R"(
SELECT number, tbl FROM history
WHERE tbl IN ('body', 'pilot') AND number IS NOT NULL ORDER BY id)";

constexpr auto k_keep = R"(
INSERT OR IGNORE INTO tool_number (number, kind) VALUES (?1, ?2))";

// False if they could not be read to the end.
bool read(SQLite::Database& database, const char* sql, GivenNumbers& numbers) {
    try {
        Query query(database, sql);
        while (query.step()) {
            const std::int64_t number = query.integer();
            numbers.kinds.try_emplace(number, query.text());
        }
        return true;
    } catch (const error::DamagedFile&) {
        return false;
    } catch (const error::InputOutput&) {
        return false;
    }
}

} // namespace

GivenNumbers given_numbers(SQLite::Database& database) {
    GivenNumbers numbers;
    numbers.all = read(database, k_from_front, numbers);
    if (!numbers.all)
        read(database, k_from_back, numbers);
    read(database, k_in_history, numbers);
    return numbers;
}

GivenNumbers keep_given_numbers(SQLite::Database& database, const GivenNumbers& numbers) {
    GivenNumbers added{{}, numbers.all};
    WriteTransaction transaction(database);
    Query keep(database, k_keep);
    for (const auto& [number, kind] : numbers.kinds)
        if (keep.put(number).put(kind).run() == 1)
            added.kinds.emplace(number, kind);
    transaction.commit();
    return added;
}

} // namespace store
