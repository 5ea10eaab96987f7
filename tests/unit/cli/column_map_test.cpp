// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/transfer/column_map.hpp"

#include <doctest/doctest.h>

#include "cli/transfer/rejects.hpp"
#include "cli/transfer/sheet.hpp"
#include "error/error.hpp"
#include "present/csv.hpp"

using namespace cli::transfer;

namespace {

const std::vector<std::string> k_known = {"number", "cut_dia", "place"};

} // namespace

TEST_CASE("a map is the same in two columns and in lines") {
    const ColumnMap expected{{"the cutter", "cut_dia"}, {"a=b", "place"}, {"colour", ""}};
    CHECK(read_column_map("The  Cutter = Cut dia\n# no\n\na=b = place\r\nColour = -", k_known) ==
          expected);
    CHECK(read_column_map("Theirs,Ours\nThe  Cutter,cut_dia\na=b,place\nColour,\n", k_known) ==
          expected);
    CHECK(read_column_map("The Cutter,cut_dia\r\n\"a=b\",place\r\ncolour,-\r\n", k_known) ==
          expected);
}

TEST_CASE("what is kept of a map gives it back for the same header, also with problems told") {
    const ColumnMap map{{"the cutter", "cut_dia"}, {"colour", ""}};
    const std::vector<std::string> header{"Colour", "The Cutter", "Place", "Problem"};
    CHECK(header_key(header) == "colour,the cutter,place");
    const std::string ours = ours_in_order(map, header);
    CHECK(ours == ",cut_dia,place");
    const ColumnMap back = map_from(ours, {"COLOUR", "problem", "the  cutter", "place"});
    CHECK(back == ColumnMap{{"colour", ""}, {"the cutter", "cut_dia"}, {"place", "place"}});
    CHECK(in_words(back, header) == "'Colour' is left out, 'The Cutter' is cut_dia");
}

TEST_CASE("rows are read by the map, and columns that are left out are not") {
    Mistakes mistakes;
    const auto rows = read_sheet("Cutter,Colour,place,problem\n7/16,red,here,old\n", k_known, "",
                                 mistakes, {{"cutter", "cut_dia"}, {"colour", ""}});
    CHECK(mistakes.empty());
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].cells == cli::record::Cells{{"cut_dia", "7/16"}, {"place", "here"}});
}

TEST_CASE("rejected rows are as they were, with one column of problems, and can be read again") {
    const std::string text = "Cutter,problem,note\n1,old,\"a \"\"b\"\", c\"\n2,,\n3,,\"x\ny\"\n";
    CHECK(rejects_csv(present::csv_text(text), {{2, "bad"}, {4, "worse, or \"so\""}}) ==
          "Cutter,note,problem\n1,\"a \"\"b\"\", c\",bad\n3,\"x\ny\",\"worse, or \"\"so\"\"\"\n");
    CHECK(present::read_csv(rejects_csv(present::csv_text(text), {{2, "bad"}})).problems.empty());
}
