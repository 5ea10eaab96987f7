// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/compile_image.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "error/error.hpp"
#include "store/compile_csv.hpp"
#include "store/compile_table.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

std::vector<std::string> tables_of(SQLite::Database& database) {
    SQLite::Statement query(database,
                            "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY rowid");
    std::vector<std::string> tables;
    while (query.executeStep())
        tables.push_back(query.getColumn(0));
    return tables;
}

void check_no_stray_files(const fs::path& folder, const std::vector<std::string>& tables) {
    for (const auto& entry : fs::directory_iterator(folder)) {
        const auto& path = entry.path();
        if (path.extension() == ".csv" &&
            std::find(tables.begin(), tables.end(), path.stem().string()) == tables.end())
            throw error::BadData(
                fmt::format("{}: no such table in reference.sql", path.filename().string()));
    }
}

void fill(SQLite::Database& database, const fs::path& folder) {
    database.exec(read_text(folder / "reference.sql"));
    const auto tables = tables_of(database);
    check_no_stray_files(folder, tables);
    std::map<std::string, CsvFile> files;
    for (const auto& table : tables)
        fill_table(database, table,
                   files.emplace(table, read_csv(folder / (table + ".csv"))).first->second);
    for (const auto& [table, file] : files)
        check_references(database, table, file);
    database.exec(read_text(folder / "derive.sql"));
}

// The first row of a query that should have none, as text.
std::string first_row(SQLite::Statement& query) {
    std::string text;
    for (int at = 0; at < query.getColumnCount(); ++at)
        text += fmt::format("{}{} {}", text.empty() ? "" : ", ", query.getColumn(at).getName(),
                            query.getColumn(at).getString());
    return text;
}

// check.sql is a list of queries, each after a line `-- name of the check`; none may find a row.
void check(SQLite::Database& database, std::string_view checks) {
    constexpr std::string_view k_mark = "-- ";
    std::string failures;
    for (auto at = checks.find(k_mark); at != std::string_view::npos;) {
        const auto end_of_name = checks.find('\n', at);
        const auto name = checks.substr(at + k_mark.size(), end_of_name - at - k_mark.size());
        at = checks.find("\n-- ", end_of_name);
        SQLite::Statement query(database,
                                std::string(checks.substr(end_of_name, at - end_of_name)));
        if (query.executeStep())
            failures += fmt::format("\n  {}: {}", name, first_row(query));
        at = at == std::string_view::npos ? at : at + 1;
    }
    if (!failures.empty())
        throw error::BadData("the tables do not agree:" + failures);
}

} // namespace

void compile_image(const fs::path& folder, const fs::path& image) {
    SQLite::Database database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    fill(database, folder);
    check(database, read_text(folder / "check.sql"));
    const auto unfinished = image.string() + ".unfinished";
    fs::remove(unfinished);
    SQLite::Statement vacuum(database, "VACUUM INTO ?");
    vacuum.bind(1, unfinished);
    vacuum.exec();
    fs::rename(unfinished, image);
}

} // namespace store
