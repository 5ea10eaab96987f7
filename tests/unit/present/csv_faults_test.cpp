// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Files that are no CSV, or no CSV of ours, and the place where each goes wrong.
#include <doctest/doctest.h>

#include <string>

#include "present/csv.hpp"

using namespace present;
using namespace std::string_literals;

namespace {

struct Fault {
    std::string text;
    std::size_t row;
    std::size_t column;
    std::string what; // how the complaint begins
};

const std::string k_open = "a quote is opened here and never closed";
const std::string k_middle = "a quote inside a cell that does not begin with one";
const std::string k_after = "text after the closing quote";
const std::string k_bytes = "not UTF-8 at byte ";
const std::string k_nul = "a NUL byte at byte ";
const std::string k_return = "a carriage return without a line end";

const std::vector<Fault>& faults() {
    static const std::vector<Fault> list = {
        // nothing there
        {"", 1, 0, "no header row"},
        {"\xEF\xBB\xBF", 1, 0, "no header row"},
        {"\n1,2\n", 1, 0, "the header row is empty"},
        {",,\n1,2,3\n", 1, 0, "the header row is empty"},
        {"\"\"\n", 1, 0, "the header row is empty"},
        // quotes that stay open
        {"\"a,b\n1,2\n", 1, 1, k_open},
        {"a,\"b\n1,2\n", 1, 2, k_open},
        {"a,b\n\"1,2\n3,4\n", 2, 1, k_open},
        {"a,b\n1,\"2\n3,4\n", 2, 2, k_open},
        {"a,b\n1,2\n3,\"", 3, 2, k_open},
        {"a,b\n1,\"two \"\"more", 2, 2, k_open},
        {"a,b\n\"1\n1\",2\n3,\"4", 3, 2, k_open},
        // quotes in the middle
        {"a\"b,c\n", 1, 1, k_middle},
        {"a,b\n3/8\",2\n", 2, 1, k_middle},
        {"a,b\n1,3/8\"\n", 2, 2, k_middle},
        {"a,b\n1, \"2\"\n", 2, 2, k_middle},
        {"a,b\n1,2\n3,x\"y\"\n", 3, 2, k_middle},
        // text after a quote
        {"\"a\"x,b\n", 1, 1, k_after},
        {"a,b\n\"1\" ,2\n", 2, 1, k_after},
        {"a,b\n1,\"2\"3\n", 2, 2, k_after},
        {"a,b\n1,\"2\"x\"\n", 2, 2, k_after},
        // rows that are ragged
        {"a,b\n1\n", 2, 2, "1 cell where the header has 2"},
        {"a,b\n1,2,3\n", 2, 3, "3 cells where the header has 2"},
        {"a,b\n1,2\n3,4,\n", 3, 3, "3 cells where the header has 2"},
        {"a,b,c\n1,2,3\n4,5\n", 3, 3, "2 cells where the header has 3"},
        {"a\n1\n2,3\n", 3, 2, "2 cells where the header has 1"},
        {"a,b\n\n1\n", 3, 2, "1 cell where the header has 2"},
        // bytes that are not UTF-8
        {"a,b\n1,\xFF\n", 2, 2, k_bytes + "6 "},
        {"\xFF\xFE"
         "a\0,\0b\0"s,
         1, 1, k_bytes + "0 "},
        {"a,b\n\xE9t\xE9,2\n", 2, 1, k_bytes + "4 "},
        {"a,\xC3\n1,2\n", 1, 2, k_bytes + "2 "},
        {"a,b\n1,2\n\xC3", 3, 1, k_bytes + "8 "},
        {"a,b\n1,\"\xFF\"\n", 2, 2, k_bytes + "7 "},
        {"a,b\n1,\xED\xA0\x80\n", 2, 2, k_bytes + "6 "},
        {"a,b\n\"1\n\n1\",\xFE\n", 2, 2, k_bytes + "11 "},
        {"\xEF\xBB\xBF"
         "a,b\n1,\xC0\xAF\n",
         2, 2, k_bytes + "9 "},
        // NUL
        {"a,b\n1,\0\n"s, 2, 2, k_nul + "6 "},
        {"\0"s, 1, 1, k_nul + "0 "},
        {"a,b\n1,2\n\0\0\0"s, 3, 1, k_nul + "8 "},
        {"a,b\n1,\"x\0\"\n"s, 2, 2, k_nul + "8 "},
        // line ends
        {"a,b\r1,2\r", 1, 2, k_return},
        {"a,b\n1\r,2\n", 2, 1, k_return},
        {"a,b\n1,2\r", 2, 2, k_return},
        {"a,b\n\"1\"\r,2\n", 2, 1, k_return},
        // too much
        {"a,b\n1," + std::string(k_longest_cell + 1, 'x') + "\n", 2, 2,
         "a cell of more than a million bytes"},
        {"a,b\n1,\"" + std::string(k_longest_cell + 1, 'x') + "\"\n", 2, 2,
         "a cell of more than a million bytes"},
        {std::string(k_longest_cell + 1, 'x') + ",b\n", 1, 1,
         "a cell of more than a million bytes"},
    };
    return list;
}

} // namespace

TEST_CASE("every malformed file is refused where it goes wrong") {
    CHECK(faults().size() > 40);
    for (const Fault& fault : faults()) {
        CAPTURE(fault.text.substr(0, 40));
        const CsvFile file = read_csv(fault.text);
        REQUIRE(file.problems.size() == 1);
        CHECK(file.problems[0].row == fault.row);
        CHECK(file.problems[0].column == fault.column);
        CHECK(file.problems[0].what.substr(0, fault.what.size()) == fault.what);
        CHECK(!file.problems[0].meant.empty());
    }
}

TEST_CASE("every ragged row is named, and the good ones are kept") {
    const CsvFile file = read_csv("a,b\n1\n2,3\n4,5,6\n");
    REQUIRE(file.problems.size() == 2);
    CHECK(file.problems[0].row == 2);
    CHECK(file.problems[1].row == 4);
    CHECK(file.rows.size() == 1);
}

TEST_CASE("a cell of exactly the longest length is read") {
    const CsvFile file = read_csv("a\n" + std::string(k_longest_cell, 'x') + "\n");
    CHECK(file.problems.empty());
    CHECK(file.rows.size() == 1);
}

TEST_CASE("a complaint quotes the cell as far as it helps") {
    const CsvFile file = read_csv("a,b\n1,3/8\"\n");
    REQUIRE(file.problems.size() == 1);
    CHECK(file.problems[0].cell == "3/8\"");
    CHECK(file.problems[0].meant == "put quotes around the cell and write each one inside twice");
}
