// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include "cli/record/make_column.hpp"
#include "cli/record/records.hpp"
#include "store/reference.hpp"

using namespace cli::record;
using length::Unit;

namespace {

struct Bench {
    store::Reference tables;
    trade::Practice practice = trade::read_practice(tables.practice());
    Reading reading{Unit::inch, Unit::inch, &practice, &tables};
};

std::string joined(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : ",") + name;
    return text;
}

template <class Record>
Cells cells_by_name(const Record& record, const Columns<Record>& columns) {
    Cells cells;
    for (const Column<Record>& column : columns)
        cells[column.name] = column.cell(record, Unit::inch);
    return cells;
}

} // namespace

TEST_CASE("files have these columns in this order") {
    CHECK(joined(names_of(body_columns())) ==
          "number,set,kind,cut_dia,cut_how,flutes,pilot_kind,pilot_dia,pilot_how,pilot_length,"
          "fluted,bore,bore_how,bore_depth,retention,set_screw,set_screw_at,reach,shank_dia,"
          "shank_kind,material,condition,work,marking,place,note");
    CHECK(joined(names_of(pilot_columns())) ==
          "number,set,pilot_dia,pilot_how,pilot_length,fluted,shank_dia,shank_how,shank_length,"
          "flat_at,flat_length,flat_depth,material,condition,work,in_body,tried,place,note");
    CHECK(joined(names_of(screw_columns())) ==
          "screw,head_dia,head_height,screw_dia,drive,drive_size,note");
    CHECK(joined(names_of(house_columns())) == "screw,hole,note");
}

TEST_CASE("a body comes out of its cells as it went in") {
    const Bench bench;
    const Cells cells = {{"number", "12"},
                         {"set", "old store"},
                         {"kind", "back spotfacer"},
                         {"cut_dia", "7/16"},
                         {"cut_how", "mark"},
                         {"flutes", "3"},
                         {"pilot_kind", "removable"},
                         {"pilot_dia", ""},
                         {"pilot_how", ""},
                         {"pilot_length", ""},
                         {"fluted", ""},
                         {"bore", ".1875 +-.0001"},
                         {"bore_how", "pin gauge"},
                         {"bore_depth", "5/8"},
                         {"retention", "set screw"},
                         {"set_screw", "#8-32"},
                         {"set_screw_at", "1/4"},
                         {"reach", "3/4"},
                         {"shank_dia", "1/2"},
                         {"shank_kind", "straight"},
                         {"material", "high-speed steel"},
                         {"condition", "dull"},
                         {"work", "sharpen; clean the bore"},
                         {"marking", "7/16"},
                         {"place", "rack 2"},
                         {"note", "two\nlines"}};
    trade::Body body;
    CHECK(read_cells(body, body_columns(), cells, bench.reading).empty());
    CHECK(cells_by_name(body, body_columns()) == cells);
    CHECK(body.work == std::vector<std::string>{"sharpen", "clean the bore"});
    CHECK(body.cut_dia->how == trade::How::mark);
    trade::Body again;
    CHECK(read_cells(again, body_columns(), cells_by_name(body, body_columns()), bench.reading)
              .empty());
    CHECK(again == body);
}

TEST_CASE("a pilot comes out of its cells as it went in") {
    const Bench bench;
    for (const char* flat : {"none", ".2", ""}) {
        const Cells cells = {{"number", "31"},      {"set", ""},
                             {"pilot_dia", ".25"},  {"pilot_how", "micrometer"},
                             {"pilot_length", ""},  {"fluted", "no"},
                             {"shank_dia", "3/16"}, {"shank_how", ""},
                             {"shank_length", ""},  {"flat_at", flat},
                             {"flat_length", ""},   {"flat_depth", ""},
                             {"material", ""},      {"condition", ""},
                             {"work", ""},          {"in_body", "12"},
                             {"tried", "slides"},   {"place", ""},
                             {"note", ""}};
        PilotRecord pilot;
        CHECK(read_cells(pilot, pilot_columns(), cells, bench.reading).empty());
        CHECK(cells_by_name(pilot, pilot_columns()) == cells);
        CHECK(pilot.has_flat ==
              (std::string(flat).empty() ? std::optional<bool>() : std::string(flat) != "none"));
    }
}

TEST_CASE("a pilot marked with a drill comes out of its cells as it went in") {
    const Bench bench;
    for (const char* mark : {"#7", "F", "no. 7", "letter f", "drill F"}) {
        PilotRecord pilot;
        CHECK(read_cells(pilot, pilot_columns(), {{"pilot_dia", mark}}, bench.reading).empty());
        const Cells cells = cells_by_name(pilot, pilot_columns());
        CHECK(cells.at("pilot_dia") == mark);
        CHECK(cells.at("pilot_how") == "mark");
        PilotRecord again;
        CHECK(read_cells(again, pilot_columns(), cells, bench.reading).empty());
        CHECK(again == pilot);
    }
    trade::Body body;
    CHECK(
        read_cells(body, body_columns(), {{"pilot_dia", "F"}, {"pilot_how", "mark"}}, bench.reading)
            .empty());
    CHECK(body.pilot_dia->how == trade::How::mark);
}

TEST_CASE("a measured pilot is not named by a drill") {
    const Bench bench;
    for (const char* how : {"micrometer", "pin gauge", "caliper", "guess"}) {
        PilotRecord pilot;
        const auto problems = read_cells(pilot, pilot_columns(),
                                         {{"pilot_dia", "F"}, {"pilot_how", how}}, bench.reading);
        REQUIRE(problems.size() == 1);
        CHECK(problems[0].column == "pilot_dia");
        CHECK(problems[0].cell == "F");
        // Nor does it become measured afterwards.
        CHECK(read_cells(pilot, pilot_columns(), {{"pilot_dia", "F"}}, bench.reading).empty());
        CHECK(read_cells(pilot, pilot_columns(), {{"pilot_how", how}}, bench.reading).size() == 1);
        CHECK(pilot.pilot_dia->how == trade::How::mark);
    }
}

TEST_CASE("what is empty or left out is unknown") {
    const Bench bench;
    trade::Body body;
    CHECK(read_cells(body, body_columns(), {{"reach", ""}, {"kind", ""}}, bench.reading).empty());
    CHECK(body == trade::Body());
}

TEST_CASE("a how alone changes what is known of the size that is there") {
    const Bench bench;
    trade::Body body;
    CHECK(read_cells(body, body_columns(), {{"bore", ".1875"}}, bench.reading).empty());
    const length::Range before = body.bore->range;
    CHECK(read_cells(body, body_columns(), {{"bore_how", "micrometer"}}, bench.reading).empty());
    CHECK(body.bore->how == trade::How::micrometer);
    CHECK(body.bore->range.hi < before.hi);
    CHECK(body.bore->text == ".1875");
}

TEST_CASE("a how without a size is refused") {
    const Bench bench;
    for (const Cells& cells :
         {Cells{{"bore_how", "mark"}}, Cells{{"bore", ""}, {"bore_how", "mark"}}}) {
        trade::Body body;
        const auto problems = read_cells(body, body_columns(), cells, bench.reading);
        REQUIRE(problems.size() == 1);
        CHECK(problems[0].column == "bore_how");
        CHECK(problems[0].cell == "mark");
    }
}

TEST_CASE("every cell that cannot be read is told, each at its column") {
    const Bench bench;
    trade::Body body;
    const auto problems = read_cells(body, body_columns(),
                                     {{"kind", "reamer"},
                                      {"cut_dia", "0"},
                                      {"flutes", "x"},
                                      {"reach", "2-Jan"},
                                      {"place", "a"},
                                      {"note", std::string(1'000'001, 'x')}},
                                     bench.reading);
    REQUIRE(problems.size() == 5);
    CHECK(problems[0].column == "kind");
    CHECK(problems[1].column == "cut_dia");
    CHECK(problems[1].what == "length: zero");
    CHECK(problems[1].cell == "0");
    CHECK(problems[2].column == "flutes");
    CHECK(problems[3].column == "reach");
    CHECK(problems[4].column == "note");
    CHECK(problems[4].what == "longer than 1000000 bytes");
    CHECK(body.place == "a");
}

TEST_CASE("numbers of tools are whole and above zero") {
    CHECK(read_count("12", 100) == 12);
    CHECK(read_count(" 12 ", 100) == 12);
    for (const char* cell :
         {"", "0", "-1", "1.5", "12a", "101", "1e2", "0x1", "99999999999999999999"})
        CHECK_THROWS_AS(static_cast<void>(read_count(cell, 100)), error::BadData);
}

TEST_CASE("a body that contradicts itself is refused at the column to mend") {
    const Bench bench;
    const auto first_column = [&](const Cells& cells) {
        trade::Body body;
        REQUIRE(read_cells(body, body_columns(), cells, bench.reading).empty());
        const auto problems = contradictions(body);
        return problems.empty() ? std::string() : problems.front().column;
    };
    CHECK(first_column({{"cut_dia", "7/16"}}).empty());
    CHECK(first_column({{"pilot_kind", "removable"}, {"bore", "3/16"}}).empty());
    CHECK(first_column({{"pilot_kind", "removable"}, {"pilot_dia", "1/4"}}) == "pilot_dia");
    CHECK(first_column({{"pilot_kind", "removable"}, {"fluted", "no"}}) == "fluted");
    CHECK(first_column({{"pilot_kind", "none"}, {"pilot_length", "1/4"}}) == "pilot_length");
    CHECK(first_column({{"pilot_kind", "none"}, {"bore_depth", "1/4"}}) == "bore_depth");
    CHECK(first_column({{"pilot_kind", "integral"}, {"bore", "1/4"}}) == "bore");
    CHECK(first_column({{"pilot_kind", "integral"}, {"retention", "detent"}}) == "retention");
    CHECK(first_column({{"pilot_kind", "integral"}, {"set_screw", "#8-32"}}) == "set_screw");
    CHECK(first_column({{"pilot_dia", "1/4"}, {"bore", "1/8"}}) == "bore");
    CHECK(first_column({{"cut_dia", "1/4"}, {"pilot_dia", "3/8"}}) == "pilot_dia");
    CHECK(first_column({{"cut_dia", "1/4"}, {"bore", "3/8"}}) == "bore");
}

TEST_CASE("JSON has a key for every column but the hows") {
    const Bench bench;
    const present::Json json = json_of(trade::Body(), body_columns());
    for (const std::string& name : names_of(body_columns())) {
        const bool how = name == "cut_how" || name == "pilot_how" || name == "bore_how";
        CHECK(json.contains(name) == !how);
    }
}
