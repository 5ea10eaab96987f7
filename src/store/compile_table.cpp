// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/compile_table.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <string_view>
#include <vector>

#include "error/error.hpp"
#include "length/parse.hpp"

namespace store {

namespace {

constexpr std::string_view k_length_suffix = "_nm";

struct Column {
    std::string name;    // in the database
    std::string heading; // in the file
    bool whole = false;  // a whole number
    bool length = false;
    bool required = false; // NOT NULL
};

// All but a row number that SQLite gives.
std::vector<Column> columns_of(SQLite::Database& database, const std::string& table) {
    SQLite::Statement query(database, R"(
        SELECT name, type, "notnull" FROM pragma_table_info(?)
        WHERE NOT (name = 'id' AND type = 'INTEGER') ORDER BY cid)");
    query.bind(1, table);
    std::vector<Column> columns;
    while (query.executeStep()) {
        Column column{query.getColumn(0), query.getColumn(0)};
        column.whole = query.getColumn(1).getString() == "INTEGER";
        column.length = column.name.ends_with(k_length_suffix);
        column.required = query.getColumn(2).getInt() != 0;
        if (column.length)
            column.heading.resize(column.heading.size() - k_length_suffix.size());
        columns.push_back(std::move(column));
    }
    return columns;
}

void check_headings(const CsvFile& file, const std::vector<Column>& columns) {
    std::string wanted;
    std::vector<std::string> headings;
    for (const auto& column : columns) {
        headings.push_back(column.heading);
        wanted += (wanted.empty() ? "" : ",") + column.heading;
    }
    if (headings != file.columns)
        throw error::BadData(fmt::format("{}:1: the columns must be: {}", file.name, wanted));
}

[[noreturn]] void refuse(const CsvFile& file, const CsvRow& row, std::string_view heading,
                         std::string_view why, std::string_view cell) {
    throw error::BadData(
        fmt::format("{}:{}: {}: {}: '{}'", file.name, row.line, heading, why, cell));
}

length::Unit unit_of(const CsvFile& file, const CsvRow& row) {
    const auto at = std::find(file.columns.begin(), file.columns.end(), "unit");
    if (at == file.columns.end())
        throw error::BadData(fmt::format("{}:1: lengths without a column named unit", file.name));
    const auto& cell = row.cells[static_cast<std::size_t>(at - file.columns.begin())];
    if (cell != "in" && cell != "mm")
        refuse(file, row, "unit", "in or mm is wanted", cell);
    return cell == "in" ? length::Unit::inch : length::Unit::millimetre;
}

// Throws error::BadData without the place.
std::int64_t read_length(std::string_view cell, length::Unit unit) {
    const auto read = length::parse_length(cell, unit);
    if (read.unit_said)
        throw error::BadData("the unit stands in its own column");
    return read.value.nm();
}

std::int64_t read_whole(std::string_view cell) {
    std::int64_t value = 0;
    const auto* end = cell.data() + cell.size();
    const auto read = std::from_chars(cell.data(), end, value);
    if (read.ec != std::errc() || read.ptr != end)
        throw error::BadData("not a whole number");
    return value;
}

void bind_cell(SQLite::Statement& insert, int at, const Column& column, const std::string& cell,
               length::Unit unit) {
    if (cell.empty() && (column.whole || !column.required))
        insert.bind(at);
    else if (column.length)
        insert.bind(at, read_length(cell, unit));
    else if (column.whole)
        insert.bind(at, read_whole(cell));
    else
        insert.bind(at, cell);
}

std::string insert_statement(const std::string& table, const std::vector<Column>& columns) {
    std::string names;
    std::string marks;
    for (const auto& column : columns) {
        names += fmt::format("{}\"{}\"", names.empty() ? "" : ", ", column.name);
        marks += marks.empty() ? "?" : ", ?";
    }
    return fmt::format(R"(INSERT INTO "{}" ({}) VALUES ({}))", table, names, marks);
}

struct Reference {
    std::size_t at; // of the column in the file
    std::string heading;
    std::string statement; // whether the row that a cell names is there
    std::string table;
};

std::vector<Reference> references_of(SQLite::Database& database, const std::string& table,
                                     const CsvFile& file) {
    SQLite::Statement query(database, R"(
        SELECT "from", "table", "to" FROM pragma_foreign_key_list(?) ORDER BY id)");
    query.bind(1, table);
    std::vector<Reference> references;
    while (query.executeStep()) {
        const auto heading = query.getColumn(0).getString();
        const auto at = std::find(file.columns.begin(), file.columns.end(), heading);
        references.push_back(
            {static_cast<std::size_t>(at - file.columns.begin()), heading,
             fmt::format(R"(SELECT 1 FROM "{}" WHERE "{}" = ?)", query.getColumn(1).getString(),
                         query.getColumn(2).getString()),
             query.getColumn(1)});
    }
    return references;
}

} // namespace

void fill_table(SQLite::Database& database, const std::string& table, const CsvFile& file) {
    const auto columns = columns_of(database, table);
    check_headings(file, columns);
    const bool has_lengths =
        std::any_of(columns.begin(), columns.end(), [](const Column& c) { return c.length; });
    SQLite::Statement insert(database, insert_statement(table, columns));
    for (const auto& row : file.rows) {
        const auto unit = has_lengths ? unit_of(file, row) : length::Unit::inch;
        insert.reset();
        for (std::size_t at = 0; at < columns.size(); ++at) {
            const auto& cell = row.cells[at];
            try {
                bind_cell(insert, static_cast<int>(at) + 1, columns[at], cell, unit);
            } catch (const error::BadData& problem) {
                refuse(file, row, columns[at].heading, problem.what(), cell);
            }
        }
        try {
            insert.exec();
        } catch (const SQLite::Exception& problem) { // names the constraint: its column
            throw error::BadData(fmt::format("{}:{}: {}", file.name, row.line, problem.what()));
        }
    }
}

void check_references(SQLite::Database& database, const std::string& table, const CsvFile& file) {
    for (const auto& reference : references_of(database, table, file)) {
        SQLite::Statement query(database, reference.statement);
        for (const auto& row : file.rows) {
            const auto& cell = row.cells[reference.at];
            if (cell.empty())
                continue;
            query.reset();
            query.bind(1, cell);
            if (!query.executeStep())
                refuse(file, row, reference.heading, fmt::format("not in {}.csv", reference.table),
                       cell);
        }
    }
}

} // namespace store
