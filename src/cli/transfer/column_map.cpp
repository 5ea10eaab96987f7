// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/transfer/column_map.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "cli/suggest.hpp"
#include "cli/transfer/sheet.hpp"
#include "error/error.hpp"
#include "present/csv.hpp"
#include "present/text.hpp"
#include "trade/text.hpp"

namespace cli::transfer {

namespace {

struct Line {
    std::size_t row = 0;
    std::string theirs;
    std::string ours;
};

[[noreturn]] void refuse(std::size_t row, const std::string& what, const std::string& meant) {
    throw error::BadData(fmt::format("line {} of the map: {}", row, what), meant);
}

bool has(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

// The first line that says anything has an equals sign.
bool is_plain(const std::string& text) {
    for (const std::string& line : trade::split(text, '\n'))
        if (line.front() != '#')
            return line.find('=') != std::string::npos;
    return true;
}

std::vector<Line> plain_lines(const std::string& text) {
    std::vector<Line> lines;
    std::size_t row = 0;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string line(trade::trimmed(std::string_view(text).substr(at, end - at)));
        at = end + 1;
        ++row;
        if (line.empty() || line.front() == '#')
            continue;
        const std::size_t equals = line.rfind('=');
        if (equals == std::string::npos)
            refuse(row, "no equals sign: '" + line + "'", "a line is: their name = our name");
        lines.push_back({row, line.substr(0, equals), line.substr(equals + 1)});
    }
    return lines;
}

std::vector<Line> csv_lines(const std::string& text) {
    const present::CsvFile file = present::read_csv(text);
    if (!file.problems.empty())
        refuse(file.problems.front().row, file.problems.front().what, file.problems.front().meant);
    if (file.header.size() != 2)
        refuse(1, fmt::format("{} columns", file.header.size()),
               "two columns, theirs and ours; or lines: their name = our name");
    std::vector<Line> lines{{1, file.header[0], file.header[1]}};
    if (trade::folded(file.header[0]) == "theirs" && trade::folded(file.header[1]) == "ours")
        lines.clear();
    for (const present::CsvRow& row : file.rows)
        lines.push_back({row.row, row.cells[0], row.cells[1]});
    return lines;
}

// A row of CSV without its line end.
std::string one_row(const std::vector<std::string>& cells) {
    std::string text = present::csv_row(cells);
    text.pop_back();
    return text;
}

} // namespace

ColumnMap read_column_map(const std::string& text, const std::vector<std::string>& known) {
    ColumnMap map;
    std::vector<std::string> used;
    for (const auto& [row, theirs, written] :
         is_plain(text) ? plain_lines(text) : csv_lines(text)) {
        const std::string name = trade::folded(theirs);
        const std::string shown(trade::trimmed(written));
        if (name.empty())
            refuse(row, "no name of a column of the file", "a line is: their name = our name");
        std::string ours = column_name(written);
        if (ours == "-")
            ours.clear();
        if (!ours.empty() && !has(known, ours))
            refuse(row, "no column of ours: '" + shown + "'",
                   did_you_mean(ours, known, fmt::format("columns: {}", fmt::join(known, ", "))));
        if (!ours.empty() && has(used, ours))
            refuse(row, "a column of ours that is there twice: '" + ours + "'", "keep one of them");
        used.push_back(ours);
        if (!map.emplace(name, ours).second)
            refuse(row, "a column of theirs that is there twice: '" + name + "'",
                   "keep one of them");
    }
    if (std::all_of(used.begin(), used.end(), [](const std::string& name) { return name.empty(); }))
        throw error::BadData(
            "the map names no column of ours",
            fmt::format("a line is: their name = our name; ours are {}", fmt::join(known, ", ")));
    return map;
}

void refuse_other_columns(const ColumnMap& map, const std::vector<std::string>& header) {
    std::vector<std::string> names;
    for (const std::string& cell : header)
        names.push_back(trade::folded(cell));
    for (const auto& [theirs, ours] : map)
        if (!has(names, theirs))
            throw error::BadData(
                "the map names a column that the file does not have: '" + theirs + "'",
                did_you_mean(theirs, names, fmt::format("it has {}", fmt::join(header, ", "))));
}

std::string header_key(const std::vector<std::string>& header) {
    std::vector<std::string> names;
    for (const std::string& cell : header)
        if (trade::folded(cell) != k_problem_column)
            names.push_back(trade::folded(cell));
    return one_row(names);
}

std::string ours_in_order(const ColumnMap& map, const std::vector<std::string>& header) {
    std::vector<std::string> names;
    for (const std::string& cell : header) {
        const auto found = map.find(trade::folded(cell));
        if (found != map.end())
            names.push_back(found->second);
        else if (trade::folded(cell) != k_problem_column)
            names.push_back(column_name(cell));
    }
    return one_row(names);
}

ColumnMap map_from(const std::string& ours, const std::vector<std::string>& header) {
    const std::vector<std::string> names = present::read_csv(ours).header;
    ColumnMap map;
    std::size_t at = 0;
    for (const std::string& cell : header)
        if (trade::folded(cell) != k_problem_column && at < names.size())
            map.emplace(trade::folded(cell), names[at++]);
    return map;
}

std::string in_words(const ColumnMap& map, const std::vector<std::string>& header) {
    std::string text;
    for (const std::string& cell : header) {
        const auto found = map.find(trade::folded(cell));
        if (found == map.end() || found->second == column_name(cell))
            continue;
        text += (text.empty() ? "'" : ", '") + present::safe(cell) + "' is " +
                (found->second.empty() ? "left out" : found->second);
    }
    return text;
}

} // namespace cli::transfer
