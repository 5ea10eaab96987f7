// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include <random>

#include "present/csv.hpp"

using namespace present;
using Cells = std::vector<std::string>;

TEST_CASE("a cell is quoted only where it must be") {
    CHECK(csv_row({"12", "3/8", "rack 2"}) == "12,3/8,rack 2\n");
    CHECK(csv_row({"a,b", "3/8\"", "two\nlines"}) == "\"a,b\",\"3/8\"\"\",\"two\nlines\"\n");
    CHECK(csv_row({" padded ", ""}) == "\" padded \",\n");
    CHECK(csv_row({""}) == "\"\"\n");
}

TEST_CASE("a plain file reads row by row") {
    const CsvFile file = read_csv("number,set\n1,a\n2,\n");
    CHECK(file.problems.empty());
    CHECK(file.header == Cells{"number", "set"});
    REQUIRE(file.rows.size() == 2);
    CHECK(file.rows[1].row == 3);
    CHECK(file.rows[1].cells == Cells{"2", ""});
}

TEST_CASE("either line end will do, also none at the end of the file") {
    for (const char* text : {"a,b\r\n1,2\r\n", "a,b\n1,2\n", "a,b\n1,2", "a,b\r\n1,2"}) {
        const CsvFile file = read_csv(text);
        CHECK(file.problems.empty());
        REQUIRE(file.rows.size() == 1);
        CHECK(file.rows[0].cells == Cells{"1", "2"});
    }
}

TEST_CASE("a byte order mark is passed over") {
    CHECK(read_csv("\xEF\xBB\xBFnumber,set\n1,a\n").header == Cells{"number", "set"});
    CHECK(read_csv("\xEF\xBB\xBF\"number\",set\n1,a\n").header == Cells{"number", "set"});
}

TEST_CASE("quoted cells hold commas, quotes and line ends") {
    const CsvFile file = read_csv("a,b\n\"x,\"\"y\"\"\",\"one\r\ntwo\"\n3,4\n");
    CHECK(file.problems.empty());
    REQUIRE(file.rows.size() == 2);
    CHECK(file.rows[0].cells == Cells{"x,\"y\"", "one\r\ntwo"});
    CHECK(file.rows[1].row == 3);
}

TEST_CASE("rows in which nothing stands are passed over and counted") {
    const CsvFile file = read_csv("a,b\n\n,\n1,2\n\n");
    CHECK(file.problems.empty());
    REQUIRE(file.rows.size() == 1);
    CHECK(file.rows[0].row == 4);
}

TEST_CASE("whatever is written reads back") {
    std::mt19937 random(20260104);
    const std::string letters = "ab,\"\n\r \xC3\xBC;'";
    for (int round = 0; round < 2000; ++round) {
        std::vector<Cells> rows(1 + random() % 4, Cells(1 + random() % 4));
        for (Cells& row : rows) {
            row.resize(rows.front().size());
            for (std::string& cell : row)
                for (std::size_t i = random() % 6; i > 0; --i) {
                    const char c = letters[random() % letters.size()];
                    cell += static_cast<unsigned char>(c) < 0x80 ? std::string(1, c) : "\xC3\xBC";
                }
            row.front() += 'x'; // so that no row is empty
        }
        std::string text;
        for (const Cells& row : rows)
            text += csv_row(row);
        const CsvFile file = read_csv(text);
        REQUIRE(file.problems.empty());
        REQUIRE(file.header == rows.front());
        REQUIRE(file.rows.size() == rows.size() - 1);
        for (std::size_t i = 1; i < rows.size(); ++i)
            REQUIRE(file.rows[i - 1].cells == rows[i]);
    }
}
