// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/tool_rows.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include "error/error.hpp"
#include "store/query.hpp"
#include "store/tools.hpp"

namespace store {

namespace {

constexpr std::int64_t k_greatest_number = 999'999'999;

constexpr auto k_next_number = R"(
SELECT coalesce(max(number), 0) + 1 FROM tool_number)";

constexpr auto k_kind_of_number = R"(
SELECT kind FROM tool_number WHERE number = ?1 ORDER BY number)";

constexpr auto k_give_number = R"(
INSERT INTO tool_number (number, kind) VALUES (?1, ?2))";

constexpr auto k_all_work = R"(
SELECT number, task FROM work ORDER BY number, position)";

constexpr auto k_work = R"(
SELECT task FROM work WHERE number = ?1 ORDER BY position)";

constexpr auto k_put_task = R"(
INSERT INTO work (number, position, task) VALUES (?1, ?2, ?3)
ON CONFLICT (number, position) DO UPDATE SET task = excluded.task)";

constexpr auto k_drop_tasks_after = R"(
DELETE FROM work WHERE number = ?1 AND position > ?2)";

constexpr auto k_all_loans = R"(
SELECT number, name FROM loan ORDER BY number)";

constexpr auto k_loan = R"(
SELECT name FROM loan WHERE number = ?1 ORDER BY number)";

const char* word(ToolKind kind) {
    return kind == ToolKind::body ? "body" : "pilot";
}

std::optional<std::string> kind_of_number(Statements& statements, std::int64_t number) {
    Query query(statements, k_kind_of_number);
    query.put(number);
    return query.step() ? std::optional(query.text()) : std::nullopt;
}

} // namespace

std::int64_t next_number(const File& file) {
    Query query(file.statements(), k_next_number);
    query.step();
    return query.integer();
}

std::int64_t give_number(Change& change, ToolKind kind, std::int64_t wanted) {
    const std::int64_t number = wanted != 0 ? wanted : next_number(change.file());
    if (number < 1 || number > k_greatest_number)
        throw error::BadData(fmt::format("no number for a tool: {}", number),
                             fmt::format("whole numbers from 1 to {} will do", k_greatest_number));
    if (const auto taken = kind_of_number(change.statements(), number))
        throw error::BadData(fmt::format("the number was given to a {} before: {}", *taken, number),
                             "a number is never given twice; leave it out to get the next one");
    Query(change.statements(), k_give_number).put(number).put(word(kind)).run();
    return number;
}

void throw_no_such(const File& file, ToolKind kind, std::int64_t number) {
    const bool is_body = body(file, number).has_value();
    const bool is_other = kind == ToolKind::body ? pilot(file, number).has_value() : is_body;
    std::string hint = "`counterpart list` shows the numbers";
    if (is_other)
        hint = fmt::format("number {} is a {}", number, is_body ? "body" : "pilot");
    else if (kind_of_number(file.statements(), number))
        hint = "the number was given out, but its tool was taken back or left behind by restore";
    throw error::NoSuchRecord(fmt::format("there is no such {}: {}", word(kind), number), hint);
}

void throw_lost_tool(const File& file, ToolKind kind, std::int64_t number) {
    throw error::DamagedFile(
        fmt::format("the catalogue is damaged (it lists {} {}, but has no record of it): {}",
                    word(kind), number, file.database().getFilename()),
        "`counterpart check` says more, `counterpart recover` mends it");
}

WorkLists all_work(SQLite::Database& database) {
    WorkLists lists;
    Query query(database, k_all_work);
    while (query.step()) {
        const std::int64_t number = query.integer();
        lists[number].push_back(query.text());
    }
    return lists;
}

Loans all_loans(SQLite::Database& database) {
    Loans loans;
    Query query(database, k_all_loans);
    while (query.step()) {
        const std::int64_t number = query.integer();
        loans[number] = query.text();
    }
    return loans;
}

std::vector<std::string> work_of(Statements& statements, std::int64_t number) {
    std::vector<std::string> tasks;
    Query query(statements, k_work);
    query.put(number);
    while (query.step())
        tasks.push_back(query.text());
    return tasks;
}

std::optional<std::string> loan_of(Statements& statements, std::int64_t number) {
    Query query(statements, k_loan);
    query.put(number);
    return query.step() ? std::optional(query.text()) : std::nullopt;
}

void add_work(Change& change, std::int64_t number, const std::vector<std::string>& tasks) {
    std::int64_t position = 0;
    for (const std::string& task : tasks)
        Query(change.statements(), k_put_task).put(number).put(++position).put(task).run();
}

void put_work(Change& change, std::int64_t number, const std::vector<std::string>& tasks) {
    const auto count = static_cast<std::int64_t>(tasks.size());
    Query(change.statements(), k_drop_tasks_after).put(number).put(count).run();
    add_work(change, number, tasks);
}

} // namespace store
