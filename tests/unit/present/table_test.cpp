// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/table.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>

#include "present/fields.hpp"
#include "present/text.hpp"

using namespace present;

namespace {

std::size_t widest_line(const std::string& text) {
    std::istringstream lines(text);
    std::string line;
    std::size_t widest = 0;
    while (std::getline(lines, line))
        widest = std::max(widest, display_width(line));
    return widest;
}

} // namespace

TEST_CASE("columns are as wide as what is in them, numbers to the right") {
    Table table({{"body", true}, {"cuts"}, {"place"}});
    table.add({"7", "7/16", "rack 2"});
    table.add({"112", "\xC3\x98 10 mm", ""});
    CHECK(table.text(80) == "body  cuts     place\n"
                            "   7  7/16     rack 2\n"
                            " 112  \xC3\x98 10 mm\n");
}

TEST_CASE("a column with nothing in it is left out") {
    Table table({{"body", true}, {"set"}, {"place"}});
    table.add({"7", "", "rack 2"});
    CHECK(table.text(80) == "body  place\n"
                            "   7  rack 2\n");
}

TEST_CASE("the widest text wraps when the line is too long") {
    Table table({{"body", true}, {"note"}});
    table.add({"7", "found in the bottom drawer of the old cupboard"});
    CHECK(table.text(26) == "body  note\n"
                            "   7  found in the bottom\n"
                            "      drawer of the old\n"
                            "      cupboard\n");
}

TEST_CASE("a table of text keeps within the width") {
    Table table({{"body", true}, {"set"}, {"place"}, {"note"}});
    table.add({"7", std::string(60, 'a'), std::string(70, 'b'), "short"});
    for (const std::size_t width : {40U, 60U, 80U, 120U})
        CHECK(widest_line(table.text(width)) <= width);
}

TEST_CASE("what is stored cannot break a row") {
    Table table({{"body", true}, {"note"}});
    table.add({"7", "one\ntwo \x1b[31m"});
    CHECK(table.text(80) == "body  note\n"
                            "   7  one\\ntwo \\x1b[31m\n");
}

TEST_CASE("emphasis is on the titles, and only when it is wanted") {
    Table table({{"body", true}});
    table.add({"7"});
    CHECK(table.text(80, {false}).find('\033') == std::string::npos);
    CHECK(table.text(80, {true}).substr(0, 4) == "\033[1m");
}

TEST_CASE("fields stand below each other and leave out what is not known") {
    Fields fields;
    fields.add("cut dia", "7/16");
    fields.add("reach", "");
    fields.add("note", "one two three");
    CHECK(fields.text(20) == "  cut dia  7/16\n"
                             "  note     one two\n"
                             "           three\n");
}
