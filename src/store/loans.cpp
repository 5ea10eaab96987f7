// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/loans.hpp"

#include "error/error.hpp"
#include "store/query.hpp"
#include "store/tool_rows.hpp"
#include "store/transaction.hpp"

namespace store {

namespace {

constexpr auto k_open = R"(
SELECT number, name, since, due, NULL FROM loan ORDER BY number)";

constexpr auto k_closed = R"(
SELECT number, name, since, due, back FROM closed_loan ORDER BY id)";

constexpr auto k_newest_time = R"(
SELECT max(at) FROM (
    SELECT since AS at FROM loan UNION ALL SELECT since FROM closed_loan
    UNION ALL SELECT back FROM closed_loan))";

constexpr auto k_lend = R"(
INSERT INTO loan (number, name, since, due)
VALUES (?1, ?2, strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), ?3))";

constexpr auto k_close = R"(
INSERT INTO closed_loan (number, name, since, due, back)
SELECT number, name, since, due, strftime('%Y-%m-%dT%H:%M:%SZ', 'now')
FROM loan WHERE number = ?1 ORDER BY number)";

constexpr auto k_end = R"(
DELETE FROM loan WHERE number = ?1)";

constexpr auto k_purge = R"(
DELETE FROM closed_loan)";

// What is deleted is overwritten in the file.
void leave_no_trace(SQLite::Database& database) {
    execute(database, "PRAGMA secure_delete = ON");
}

std::vector<Loan> loans_from(SQLite::Database& database, const std::string& sql) {
    std::vector<Loan> loans;
    Query query(database, sql);
    while (query.step()) {
        Loan& loan = loans.emplace_back();
        loan.number = query.integer();
        loan.name = query.text();
        loan.since = query.text();
        loan.due = query.maybe_text();
        loan.back = query.maybe_text();
    }
    return loans;
}

} // namespace

std::vector<Loan> open_loans(const File& file) {
    return loans_from(file.database(), k_open);
}

std::vector<Loan> closed_loans(const File& file) {
    return loans_from(file.database(), k_closed);
}

std::optional<std::string> newest_loan_time(const File& file) {
    Query query(file.database(), k_newest_time);
    return query.step() ? query.maybe_text() : std::nullopt;
}

void lend(File& file, const std::vector<std::int64_t>& numbers, const std::string& name,
          const std::optional<std::string>& due) {
    WriteTransaction transaction(file.database());
    for (const std::int64_t number : numbers) {
        if (const auto who = loan_of(file.statements(), number))
            throw error::BadData("already on loan to " + *who + ": " + std::to_string(number));
        Query(file.statements(), k_lend).put(number).put(name).put(due).run();
    }
    transaction.commit();
}

void take_back(File& file, const std::vector<std::int64_t>& numbers) {
    SQLite::Database& database = file.database();
    leave_no_trace(database);
    WriteTransaction transaction(database);
    for (const std::int64_t number : numbers) {
        Query(database, k_close).put(number).run();
        if (Query(database, k_end).put(number).run() == 0)
            throw error::BadData("not on loan: " + std::to_string(number));
    }
    transaction.commit();
}

int purge_closed_loans(File& file) {
    SQLite::Database& database = file.database();
    leave_no_trace(database);
    WriteTransaction transaction(database);
    const int count = Query(database, k_purge).run();
    transaction.commit();
    return count;
}

} // namespace store
