// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// How many keys a tool takes, Enter and Tab counted, to enter the demo's sheets: by quick entry (as
// its files of typed lines have it), by `add` with the options that are needed, and into a sheet of
// cells.
//
//     intake_keys SEED-DEMO
#include <fmt/format.h>

#include <string>

#include "sheets.hpp"

namespace {

using Row = std::map<std::string, std::string>;

// A tool only needs its number said where it is not the next one.
bool says_number(const Row& row, int last) {
    return std::stoi(row.at("number")) != last + 1;
}

// What the program takes for granted when the option is left out.
bool is_needed(const std::string& column, const std::string& cell) {
    const bool a_kind = column == "kind" || column == "pilot_kind";
    return !cell.empty() && !(a_kind && cell == "unknown");
}

// ` --cut-dia 7/16`, with quotes where a shell needs them.
std::size_t option_keys(const std::string& column, const std::string& cell) {
    const std::string plain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789._/+-";
    const bool quoted = cell.find_first_not_of(plain) != std::string::npos;
    return 3 + column.size() + 1 + cell.size() + (quoted ? 2 : 0);
}

struct Keys {
    std::size_t add = 0;
    std::size_t sheet = 0;
};

Keys count(const sheets::Sheet& sheet, const std::vector<std::string>& columns, bool pilots,
           int last) {
    Keys keys;
    const std::string command = pilots ? "counterpart add pilot" : "counterpart add body";
    for (const Row& row : sheet.rows) {
        const bool number = says_number(row, last);
        last = std::stoi(row.at("number"));
        keys.add += command.size() + 1;
        keys.sheet += 1;
        if (number) {
            keys.add += option_keys("number", row.at("number"));
            keys.sheet += row.at("number").size();
        }
        for (const std::string& column : columns) {
            if (column == "number")
                continue;
            const std::string& cell = row.at(column);
            keys.sheet += cell.size() + 1;
            if (is_needed(column, cell))
                keys.add += option_keys(column, cell);
        }
    }
    return keys;
}

} // namespace

int main(int count_of_words, char** words) {
    if (count_of_words != 2) {
        fmt::print(stderr, "usage: intake_keys SEED-DEMO\n");
        return 2;
    }
    const std::filesystem::path demo = words[1];
    const sheets::Sheet bodies = sheets::read_sheet(demo / "bodies.csv");
    const sheets::Sheet pilots = sheets::read_sheet(demo / "pilots.csv");
    const double tools = static_cast<double>(bodies.rows.size() + pilots.rows.size());
    const int last_body = std::stoi(bodies.rows.back().at("number"));
    const auto a_tool = [tools](std::size_t keys) { return static_cast<double>(keys) / tools; };

    const Keys quick_bodies = count(bodies, sheets::quick_columns(false), false, 0);
    const Keys quick_pilots = count(pilots, sheets::quick_columns(true), true, last_body);
    const Keys all_bodies = count(bodies, bodies.columns, false, 0);
    const Keys all_pilots = count(pilots, pilots.columns, true, last_body);
    fmt::print("{:<20}{:>16}{:>16}\n", "keys a tool", "what decides", "every column");
    fmt::print("{:<20}{:>16.1f}{:>16.1f}\n", "intake",
               a_tool(sheets::read_file(demo / "intake.txt").size()),
               a_tool(sheets::read_file(demo / "intake-all.txt").size()));
    fmt::print("{:<20}{:>16.1f}{:>16.1f}\n", "a sheet of cells",
               a_tool(quick_bodies.sheet + quick_pilots.sheet),
               a_tool(all_bodies.sheet + all_pilots.sheet));
    fmt::print("{:<20}{:>16.1f}{:>16.1f}\n", "add", a_tool(quick_bodies.add + quick_pilots.add),
               a_tool(all_bodies.add + all_pilots.add));
    return 0;
}
