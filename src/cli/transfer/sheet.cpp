// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The header decides what a cell means, so it is checked first and strictly.
#include "cli/transfer/sheet.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "cli/suggest.hpp"
#include "present/csv.hpp"
#include "trade/text.hpp"

namespace cli::transfer {

namespace {

bool has(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

void refuse_other_separator(const std::string& header, Mistakes& mistakes) {
    for (const char separator : {';', '\t'}) {
        if (header.find(separator) == std::string::npos)
            continue;
        mistakes.add(1, {"1", "the columns are not separated by commas", header,
                         "save the file as CSV with commas"});
        return;
    }
}

// Our name of a column of the file; empty where it is passed over.
std::string our_name(const std::string& cell, const ColumnMap& map) {
    const std::string theirs = trade::folded(cell);
    if (const auto found = map.find(theirs); found != map.end())
        return found->second;
    return theirs == k_problem_column ? std::string() : column_name(cell);
}

std::vector<std::string> check_header(const present::CsvFile& file,
                                      const std::vector<std::string>& known,
                                      const std::string& required, const ColumnMap& map,
                                      Mistakes& mistakes) {
    std::vector<std::string> names;
    if (file.header.size() == 1)
        refuse_other_separator(file.header.front(), mistakes);
    if (!mistakes.empty())
        return names;
    for (std::size_t i = 0; i < file.header.size(); ++i) {
        const std::string& cell = file.header[i];
        const std::string name = our_name(cell, map);
        const bool passed_over = name.empty() && !cell.empty();
        const std::string place = std::to_string(i + 1);
        if (!passed_over && !has(known, name))
            mistakes.add(
                1, {place, "unknown column", cell.empty() ? "(empty)" : cell,
                    did_you_mean(name, known, fmt::format("columns: {}", fmt::join(known, ", ")))});
        else if (!passed_over && has(names, name))
            mistakes.add(1, {place, "a column that is there twice", cell, "keep one of them"});
        names.push_back(name);
    }
    if (!required.empty() && !has(names, required))
        mistakes.add(1, {"", "the column " + required + " is missing", "", "add it"});
    return names;
}

} // namespace

std::string column_name(std::string_view cell) {
    std::string name = trade::folded(cell);
    std::replace(name.begin(), name.end(), ' ', '_');
    return name;
}

std::vector<SheetRow> read_sheet(std::string_view text, const std::vector<std::string>& known,
                                 const std::string& required, Mistakes& mistakes,
                                 const ColumnMap& map) {
    const present::CsvFile file = present::read_csv(text);
    std::vector<std::string> names;
    if (!file.header.empty())
        names = check_header(file, known, required, map, mistakes);
    for (const present::CsvProblem& problem : file.problems) {
        std::string column;
        if (problem.column > 0)
            column = problem.row > 1 && problem.column <= file.header.size()
                         ? column_name(file.header[problem.column - 1])
                         : std::to_string(problem.column);
        mistakes.add(problem.row, {column, problem.what, problem.cell, problem.meant});
    }
    std::vector<SheetRow> rows;
    if (names.size() != file.header.size() || (!required.empty() && !has(names, required)))
        return rows;
    for (const present::CsvRow& row : file.rows) {
        SheetRow& added = rows.emplace_back();
        added.row = row.row;
        for (std::size_t i = 0; i < names.size(); ++i)
            if (!names[i].empty())
                added.cells[names[i]] = std::string(trade::trimmed(row.cells[i]));
    }
    return rows;
}

} // namespace cli::transfer
