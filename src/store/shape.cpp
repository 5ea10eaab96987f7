// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/shape.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <map>

#include "store/migrations.hpp"
#include "store/query.hpp"
#include "store/session.hpp"

namespace store {

namespace {

constexpr auto k_objects = R"(
SELECT type || ' ' || name, coalesce(tbl_name, '') || ': ' || coalesce(sql, '')
FROM sqlite_schema WHERE name NOT LIKE 'sqlite_stat%' ORDER BY type, name)";

using Objects = std::map<std::string, std::string>;

Objects objects(SQLite::Database& database) {
    Objects found;
    Query query(database, k_objects);
    while (query.step()) {
        std::string name = query.text();
        found[std::move(name)] = query.text();
    }
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

} // namespace

std::vector<std::string> foreign_objects(SQLite::Database& database) {
    const Objects right = objects_of_version(integer_from(database, "PRAGMA user_version"));
    Objects left = objects(database);
    std::vector<std::string> names;
    for (const auto& [name, sql] : right) {
        const auto found = left.find(name);
        if (found == left.end() || found->second != sql)
            names.push_back(name);
        if (found != left.end())
            left.erase(found);
    }
    for (const auto& [name, sql] : left)
        names.push_back(name);
    return names;
}

} // namespace store
