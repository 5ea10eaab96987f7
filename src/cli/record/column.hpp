// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The columns of a record: one description a column, from which come the CSV in both directions,
// the options of `add` and `change`, and the JSON.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "cli/record/size_cell.hpp"
#include "error/error.hpp"
#include "present/json.hpp"

namespace cli::record {

// Column name to cell, trimmed; an empty cell is unknown, a missing one is not spoken of.
using Cells = std::map<std::string, std::string, std::less<>>;

// What is wrong with one cell.
struct Problem {
    std::string column;
    std::string what;
    std::string cell;
    std::string meant; // what would be right; may be empty
};

template <class Record>
struct Column {
    std::string name;        // `cut_dia`
    std::string placeholder; // of its option: SIZE, WORD, TEXT, N
    std::string about;       // of its option
    std::function<std::string(const Record&, length::Unit stored)> cell;
    // Sets the field from the cell of this column, which is there. Throws error::BadData.
    std::function<void(Record&, const Cells&, const Reading&)> read;
    // Absent where another column's JSON tells it.
    std::function<present::Json(const Record&)> json;
    // Of a dimension: the dimension, null when it is not known.
    std::function<const trade::Dimension*(const Record&)> size = nullptr;
};

template <class Record>
using Columns = std::vector<Column<Record>>;

// The name of its option: `--cut-dia`.
[[nodiscard]] std::string option_name(const std::string& column);

// What an error says of a cell, without the value that it ends in.
[[nodiscard]] Problem problem_of(const std::string& column, const std::string& cell,
                                 const std::string& message, const std::string& hint);

// Reads the cells that are there into the record; what cannot be read is left as it was.
template <class Record>
std::vector<Problem> read_cells(Record& record, const Columns<Record>& columns, const Cells& cells,
                                const Reading& reading) {
    std::vector<Problem> problems;
    for (const Column<Record>& column : columns) {
        const auto cell = cells.find(column.name);
        if (cell == cells.end())
            continue;
        try {
            column.read(record, cells, reading);
        } catch (const error::BadData& bad) {
            problems.push_back(problem_of(column.name, cell->second, bad.what(), bad.hint()));
        }
    }
    return problems;
}

template <class Record>
present::Json json_of(const Record& record, const Columns<Record>& columns) {
    present::Json json = present::Json::object();
    for (const Column<Record>& column : columns)
        if (column.json)
            json[column.name] = column.json(record);
    return json;
}

template <class Record>
std::vector<std::string> cells_of(const Record& record, const Columns<Record>& columns,
                                  length::Unit stored) {
    std::vector<std::string> cells;
    for (const Column<Record>& column : columns)
        cells.push_back(column.cell(record, stored));
    return cells;
}

template <class Record>
std::vector<std::string> names_of(const Columns<Record>& columns) {
    std::vector<std::string> names;
    for (const Column<Record>& column : columns)
        names.push_back(column.name);
    return names;
}

// Throws error::BadData for the first problem, named by its option or by its column.
void refuse_options(const std::vector<Problem>& problems);
void refuse_columns(const std::vector<Problem>& problems);

} // namespace cli::record
