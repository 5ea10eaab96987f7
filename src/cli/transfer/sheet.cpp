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

std::vector<std::string> check_header(const std::vector<std::string>& cells, const Header& header,
                                      Mistakes& mistakes) {
    std::vector<std::string> names;
    if (cells.size() == 1)
        refuse_other_separator(cells.front(), mistakes);
    if (!mistakes.empty())
        return names;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const std::string& cell = cells[i];
        const std::string name = our_name(cell, header.map);
        const bool passed_over = name.empty() && !cell.empty();
        const std::string place = std::to_string(i + 1);
        if (!passed_over && !has(header.known, name))
            mistakes.add(1,
                         {place, "unknown column", cell.empty() ? "(empty)" : cell,
                          did_you_mean(name, header.known,
                                       fmt::format("columns: {}", fmt::join(header.known, ", ")))});
        else if (!passed_over && has(names, name))
            mistakes.add(1, {place, "a column that is there twice", cell, "keep one of them"});
        names.push_back(name);
    }
    if (!header.required.empty() && !has(names, header.required))
        mistakes.add(1, {"", "the column " + header.required + " is missing", "", "add it"});
    return names;
}

void tell(const std::vector<present::CsvProblem>& problems, const std::vector<std::string>& header,
          Mistakes& mistakes) {
    for (const present::CsvProblem& problem : problems) {
        std::string column;
        if (problem.column > 0)
            column = problem.row > 1 && problem.column <= header.size()
                         ? column_name(header[problem.column - 1])
                         : std::to_string(problem.column);
        mistakes.add(problem.row, {column, problem.what, problem.cell, problem.meant});
    }
}

} // namespace

std::string column_name(std::string_view cell) {
    std::string name = trade::folded(cell);
    std::replace(name.begin(), name.end(), ' ', '_');
    return name;
}

void read_sheet(present::CsvSource source, const Header& header, Mistakes& mistakes,
                const SeeRow& see) {
    present::CsvReader reader(std::move(source));
    const std::vector<std::string>& cells = reader.header();
    std::vector<std::string> names;
    if (!cells.empty())
        names = check_header(cells, header, mistakes);
    const bool readable =
        names.size() == cells.size() && (header.required.empty() || has(names, header.required));
    while (const auto row = reader.next()) {
        tell(reader.take_problems(), cells, mistakes);
        if (!readable)
            continue;
        SheetRow shown;
        shown.row = row->row;
        for (std::size_t i = 0; i < names.size(); ++i)
            if (!names[i].empty())
                shown.cells[names[i]] = std::string(trade::trimmed(row->cells[i]));
        see(shown);
    }
    tell(reader.take_problems(), cells, mistakes);
}

std::vector<SheetRow> read_sheet(std::string_view text, const std::vector<std::string>& known,
                                 const std::string& required, Mistakes& mistakes,
                                 const ColumnMap& map) {
    std::vector<SheetRow> rows;
    read_sheet(present::csv_text(text), {known, required, map}, mistakes,
               [&rows](const SheetRow& row) { rows.push_back(row); });
    return rows;
}

} // namespace cli::transfer
