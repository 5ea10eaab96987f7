// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The cut-down question's figures for the sqlite3 shell, as tables of screws, holes and limits.
// Usage: list_asked CATALOGUE >FILE.sql
#include <fmt/format.h>

#include <iostream>

#include "speed/cut_down.hpp"

namespace {

constexpr auto k_tables = R"(
BEGIN;
CREATE TABLE limits (head_clearance INTEGER, slip_least INTEGER, slip_most INTEGER) STRICT;
CREATE TABLE screw (id INTEGER PRIMARY KEY, name TEXT, head_lo INTEGER, head_hi INTEGER,
    screw_hi INTEGER, twice_largest INTEGER, twice_small INTEGER, twice_tool INTEGER,
    twice_recommended INTEGER) STRICT;
CREATE TABLE hole (screw INTEGER, place INTEGER, name TEXT, lo INTEGER, hi INTEGER,
    running_least INTEGER, running_most INTEGER, twice_best INTEGER,
    PRIMARY KEY (screw, place)) STRICT, WITHOUT ROWID;
)";

void print(const speed::CutDown& question) {
    const auto& limits = question.limits;
    std::cout << k_tables
              << fmt::format("INSERT INTO limits VALUES ({}, {}, {});\n", limits.head_clearance,
                             limits.slip_least, limits.slip_most);
    for (const auto& screw : question.asked) {
        std::cout << fmt::format(
            "INSERT INTO screw VALUES ({}, '{}', {}, {}, {}, {}, {}, {}, {});\n", screw.id,
            screw.name, screw.head_lo, screw.head_hi, screw.screw_hi, screw.twice_largest,
            screw.twice_small, screw.twice_tool, screw.twice_recommended);
        int place = 0;
        for (const auto& hole : screw.holes)
            std::cout << fmt::format(
                "INSERT INTO hole VALUES ({}, {}, '{}', {}, {}, {}, {}, {});\n", screw.id, ++place,
                hole.name, hole.lo, hole.hi, hole.running_least, hole.running_most,
                hole.twice_best);
    }
    std::cout << "COMMIT;\n";
}

} // namespace

int main(int count, char** words) {
    if (count != 2) {
        std::cerr << "usage: list_asked CATALOGUE >FILE.sql\n";
        return 2;
    }
    try {
        print(speed::cut_down(store::File::open(words[1], store::Access::read)));
    } catch (const std::exception& problem) {
        std::cerr << "list_asked: " << problem.what() << "\n";
        return 1;
    }
    return 0;
}
