// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/shape.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <fmt/ranges.h>

#include <algorithm>
#include <iterator>
#include <utility>

#include "error/error.hpp"
#include "store/migrations.hpp"
#include "store/query.hpp"
#include "store/session.hpp"

namespace store {

namespace {

// What the library keeps for its planner is no one's.
constexpr auto k_objects = R"(
SELECT type || ' ' || name, coalesce(tbl_name, '') || ': ' || coalesce(sql, '')
FROM sqlite_schema WHERE NOT (type = 'table' AND name IN ('sqlite_stat1', 'sqlite_stat4'))
ORDER BY type, name)";

// As the library understands the schema, not as its rows call themselves.
constexpr auto k_no_tables = R"(
SELECT type || ' ' || name FROM pragma_table_list
WHERE schema = 'main' AND type <> 'table' ORDER BY name)";

// What is more than a table: it may run.
constexpr auto k_programs = R"(
SELECT sql FROM sqlite_schema WHERE sql NOT GLOB 'CREATE TABLE *' ORDER BY rowid)";

// Name and text; in order. A schema can hold one name twice.
using Objects = std::vector<std::pair<std::string, std::string>>;

Objects objects(SQLite::Database& database) {
    Objects found;
    Query query(database, k_objects);
    while (query.step()) {
        std::string name = query.text();
        found.emplace_back(std::move(name), query.text());
    }
    std::sort(found.begin(), found.end());
    return found;
}

Objects objects_of_version(std::int64_t version) {
    SQLite::Database fresh(":memory:", SQLite::OPEN_READWRITE);
    Session session;
    register_functions(fresh, session);
    const auto& steps = migrations();
    for (std::size_t i = 0; i < steps.size() && static_cast<std::int64_t>(i) < version; ++i)
        execute(fresh, std::string(steps[i].sql));
    return objects(fresh);
}

// The library keeps the text of an index and a trigger as a step has it.
bool is_ours(const std::string& sql) {
    const auto& steps = migrations();
    return std::any_of(steps.begin(), steps.end(), [&](const Migration& step) {
        return step.sql.find(sql) != std::string_view::npos;
    });
}

bool has_foreign_programs(SQLite::Database& database) {
    Query query(database, k_programs);
    while (query.step())
        if (!is_ours(query.text()))
            return true;
    return false;
}

[[noreturn]] void throw_foreign(const std::vector<std::string>& names, const std::string& path) {
    constexpr std::size_t k_most_named = 3;
    const std::vector<std::string> first(
        names.begin(),
        names.begin() + static_cast<std::ptrdiff_t>(std::min(names.size(), k_most_named)));
    throw error::DamagedFile(
        fmt::format("the file is not as this program makes a catalogue ({}{}): {}",
                    fmt::join(first, ", "), names.size() > k_most_named ? " and more" : "", path),
        "`counterpart recover` takes its rows over into a new file; look them over");
}

} // namespace

std::vector<std::string> foreign_objects(SQLite::Database& database) {
    const Objects right = objects_of_version(integer_from(database, "PRAGMA user_version"));
    const Objects there = objects(database);
    Objects unlike;
    std::set_symmetric_difference(right.begin(), right.end(), there.begin(), there.end(),
                                  std::back_inserter(unlike));
    std::vector<std::string> names;
    for (const auto& [name, sql] : unlike)
        if (names.empty() || names.back() != name)
            names.push_back(name);
    return names;
}

void refuse_views(SQLite::Database& database, const std::string& path) {
    std::vector<std::string> names;
    Query query(database, k_no_tables);
    while (query.step())
        names.push_back(query.text());
    if (!names.empty())
        throw_foreign(names, path);
}

void refuse_foreign_programs(SQLite::Database& database, const std::string& path) {
    refuse_views(database, path);
    if (has_foreign_programs(database))
        throw_foreign(foreign_objects(database), path);
}

} // namespace store
