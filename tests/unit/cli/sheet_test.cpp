// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/transfer/sheet.hpp"

#include <doctest/doctest.h>

#include <sstream>

using namespace cli::transfer;

namespace {

const std::vector<std::string> k_known = {"number", "cut_dia", "place"};

std::string complaints(const std::string& text, const std::string& required = "") {
    Mistakes mistakes;
    static_cast<void>(read_sheet(text, k_known, required, mistakes));
    std::ostringstream out;
    mistakes.print("a.csv", out);
    return out.str();
}

} // namespace

TEST_CASE("columns may stand in any order, in any case, with blanks for underscores") {
    Mistakes mistakes;
    const auto rows =
        read_sheet("Place, Cut dia ,NUMBER\n rack 1 ,7/16,3\n", k_known, "number", mistakes);
    CHECK(mistakes.empty());
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].row == 2);
    CHECK(rows[0].cells ==
          cli::record::Cells{{"number", "3"}, {"cut_dia", "7/16"}, {"place", "rack 1"}});
}

TEST_CASE("a column that is not spoken of is not in the row") {
    Mistakes mistakes;
    const auto rows = read_sheet("place\nrack 1\n", k_known, "", mistakes);
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].cells.size() == 1);
}

TEST_CASE("a header that is not ours is refused, with what was meant") {
    CHECK(complaints("number,cut_dai\n") ==
          "a.csv: row 1, column 2: unknown column: 'cut_dai'\n    did you mean 'cut_dia'?\n");
    CHECK(complaints("number,number\n") ==
          "a.csv: row 1, column 2: a column that is there twice: 'number'\n    keep one of them\n");
    CHECK(complaints("number;place\n1;x\n") ==
          "a.csv: row 1, column 1: the columns are not separated by commas: 'number;place'\n"
          "    save the file as CSV with commas\n");
    CHECK(complaints("place\nx\n", "number") ==
          "a.csv: row 1: the column number is missing\n    add it\n");
}

TEST_CASE("places in the file are told by the names of the columns") {
    CHECK(complaints("number,place\n1,\"x\n") ==
          "a.csv: row 2, column place: a quote is opened here and never closed: '\"x\\n'\n"
          "    close it with another quote\n");
}

TEST_CASE("mistakes are told by row, the first twenty, and how many more") {
    Mistakes mistakes;
    for (std::size_t row = 30; row > 1; --row)
        mistakes.add(row, cli::record::Problem{"place", "wrong", "x", ""});
    std::ostringstream out;
    mistakes.print("a.csv", out);
    const std::string text = out.str();
    CHECK(text.substr(0, text.find('\n')) == "a.csv: row 2, column place: wrong: 'x'");
    CHECK(text.find("row 21,") != std::string::npos);
    CHECK(text.find("row 22,") == std::string::npos);
    CHECK(text.find("a.csv: and 9 more\n") != std::string::npos);
}

TEST_CASE("a mistake quotes what it was given safely and not at length") {
    Mistakes mistakes;
    mistakes.add(2, cli::record::Problem{"place", "wrong", "\x1b" + std::string(200, 'x'), ""});
    std::ostringstream out;
    mistakes.print("a\n.csv", out);
    CHECK(out.str().find('\x1b') == std::string::npos);
    CHECK(out.str().substr(0, 8) == "a\\n.csv:");
    CHECK(out.str().size() < 130);
}
