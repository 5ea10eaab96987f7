// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Reading the tables' CSV files: RFC 4180, with the line named in every refusal.
#include <doctest/doctest.h>

#include <string>

#include "error/error.hpp"
#include "store/compile_csv.hpp"

namespace {

std::string refusal(std::string_view text) {
    try {
        (void)store::parse_csv(text, "t.csv");
    } catch (const error::BadData& problem) {
        return problem.what();
    }
    return "none";
}

} // namespace

TEST_CASE("cells are read with and without quotes, over lines, and with either line end") {
    const auto file = store::parse_csv("a,b\r\n1,\"x, \"\"y\"\"\nz\"\n,2\n", "t.csv");
    CHECK(file.columns == std::vector<std::string>{"a", "b"});
    REQUIRE(file.rows.size() == 2);
    CHECK(file.rows[0].cells == std::vector<std::string>{"1", "x, \"y\"\nz"});
    CHECK(file.rows[0].line == 2);
    CHECK(file.rows[1].cells == std::vector<std::string>{"", "2"});
    CHECK(file.rows[1].line == 4);
    CHECK(store::parse_csv("a\n1", "t.csv").rows.size() == 1);
}

TEST_CASE("files that are not whole are refused with their line") {
    CHECK(refusal("a,b\n1,2\n\"x,3\n4,5\n") == "t.csv:3: a quote is not closed");
    CHECK(refusal("a,b\n1,2\n1\n") == "t.csv:3: 1 cells where 2 columns are named");
    CHECK(refusal("a,b\n1,2,3\n") == "t.csv:2: 3 cells where 2 columns are named");
    CHECK(refusal("a,b\n1,\"2\"3\n") == "t.csv:2: text after a closing quote");
    CHECK(refusal("a,b\n1,2\"3\n") ==
          "t.csv:2: a quote inside a cell that does not begin with one");
    CHECK(refusal("a,a\n1,2\n") == "t.csv:1: a column named twice: a");
    CHECK(refusal("a,\n1,2\n") == "t.csv:1: a column without a name");
    CHECK(refusal("a,b\n") == "t.csv:2: no rows");
}
