// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "sheets.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <stdexcept>

#include "present/csv.hpp"

namespace sheets {

namespace {

namespace fs = std::filesystem;

bool has(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

std::string compare(const Sheet& wanted, const Sheet& found, bool quick, bool pilots) {
    if (wanted.rows.size() != found.rows.size())
        return fmt::format("{} rows, not {}\n", found.rows.size(), wanted.rows.size());
    std::string text;
    for (std::size_t i = 0; i < wanted.rows.size(); ++i)
        for (const std::string& column : wanted.columns) {
            const bool entered = !quick || column == "number" || has(quick_columns(pilots), column);
            const std::string cell = entered ? wanted.rows[i].at(column) : "";
            const std::string& is = found.rows[i].at(column);
            if (is != cell)
                text += fmt::format("number {}: {}: '{}', not '{}'\n", wanted.rows[i].at("number"),
                                    column, is, cell);
        }
    return text;
}

} // namespace

std::string read_file(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        lines.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return lines;
}

Sheet read_sheet(const fs::path& path) {
    const present::CsvFile file = present::read_csv(read_file(path));
    if (file.rows.empty() || !file.problems.empty())
        throw std::runtime_error("no sheet: " + path.string());
    Sheet sheet{file.header, {}};
    for (const present::CsvRow& row : file.rows) {
        auto& cells = sheet.rows.emplace_back();
        for (std::size_t i = 0; i < file.header.size(); ++i)
            cells[file.header[i]] = row.cells[i];
    }
    return sheet;
}

const std::vector<std::string>& quick_columns(bool pilots) {
    static const std::vector<std::string> of_bodies{
        "set",       "kind", "cut_dia",  "cut_how",   "pilot_kind", "pilot_dia",
        "pilot_how", "bore", "bore_how", "condition", "place"};
    static const std::vector<std::string> of_pilots{"set",       "pilot_dia", "pilot_how",
                                                    "shank_dia", "shank_how", "condition",
                                                    "in_body",   "tried",     "place"};
    return pilots ? of_pilots : of_bodies;
}

std::string differences(const fs::path& program, const fs::path& catalogue, const fs::path& demo,
                        bool quick) {
    std::string text;
    for (const char* kind : {"bodies", "pilots"}) {
        const fs::path out = catalogue.parent_path() / (std::string(kind) + ".csv");
        const std::string command =
            fmt::format("'{}' --file '{}' export {} --force -o '{}' >/dev/null", program.string(),
                        catalogue.string(), kind, out.string());
        if (std::system(command.c_str()) != 0)
            return "cannot export " + std::string(kind) + '\n';
        text += compare(read_sheet(demo / (std::string(kind) + ".csv")), read_sheet(out), quick,
                        std::string(kind) == "pilots");
    }
    return text;
}

} // namespace sheets
