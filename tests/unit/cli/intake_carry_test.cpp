// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a line of quick entry takes over from the lines before it.
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "cli/intake/line.hpp"

using namespace cli::intake;

namespace {

// The last of some lines.
Line last(const std::vector<std::string>& lines) {
    Line line;
    for (const std::string& text : lines)
        line = read_line(text, line.next);
    return line;
}

std::string cell(const Line& line, const std::string& column) {
    const auto found = line.cells.find(column);
    return found == line.cells.end() ? "-" : found->second;
}

std::string taken(const Line& line) {
    std::string text;
    for (const std::string& column : line.taken)
        text += (text.empty() ? "" : " ") + column;
    return text;
}

} // namespace

TEST_CASE("a place counts up where it ends in a number") {
    CHECK(next_place("rack 1, hole 3") == "rack 1, hole 4");
    CHECK(next_place("rack 1, hole 9") == "rack 1, hole 10");
    CHECK(next_place("rack 1, hole 99") == "rack 1, hole 100");
    CHECK(next_place("B4") == "B5");
    CHECK(next_place("A09") == "A10");
    CHECK(next_place("9") == "10");
    CHECK(next_place("drawer 1, back") == "drawer 1, back");
    CHECK(next_place("") == "");
    CHECK(said_place("25", "rack 1, hole 22") == "rack 1, hole 25");
    CHECK(said_place("25", "") == "25");
    CHECK(said_place("B5", "rack 1, hole 22") == "B5");
}

TEST_CASE("set and place run on, and the line says that they were taken over") {
    const Line line = last({"set school place rack 2, hole 9 1/4", "9/32"});
    CHECK(cell(line, "set") == "school");
    CHECK(cell(line, "place") == "rack 2, hole 10");
    CHECK(taken(line) == "place set");
}

TEST_CASE("a place said for all stays as it is, and one said for a tool counts again") {
    const std::vector<std::string> lines{"1/4 all place tin, drawer 4", "9/32"};
    CHECK(cell(last(lines), "place") == "tin, drawer 4");
    CHECK(cell(last({lines[0], lines[1], "5/16 p rack 1", "3/8"}), "place") == "rack 2");
    CHECK(cell(last({lines[0], "5/16 p 7"}), "place") == "tin, drawer 7");
}

TEST_CASE("a size written alike was known alike") {
    const Line line = last({"1/2 mark x .3267 mic", "9/16 x .3267"});
    CHECK(cell(line, "cut_how") == "mark");
    CHECK(cell(line, "pilot_how") == "micrometer");
    CHECK(taken(line) == "cut_how pilot_how");
    // Neither from another dimension nor from one that was written otherwise.
    CHECK(cell(last({"1/2 mark", ".500"}), "cut_how") == "-");
    CHECK(cell(last({"1/2 mark", "9/16 bore 3/16"}), "bore_how") == "-");
    CHECK(cell(last({"pilot 1/2 cal", "9/16 x 1/2"}), "pilot_how") == "-");
    CHECK(cell(last({".5002 mic", ".500"}), "cut_how") == "-");
    CHECK(cell(last({".5002 mic", ".5002 +-.0001"}), "cut_how") == "-");
    CHECK(cell(last({"6 mm mark", "5.98 mm"}), "cut_how") == "-");
    CHECK(cell(last({"6 mm mark", "8 mm"}), "cut_how") == "mark");
    CHECK(cell(last({"1 mark", "6 mm"}), "cut_how") == "-");
}

TEST_CASE("what follows all holds for the tools after it, until it is said anew") {
    const std::string first = "1/4 x 1/8 all hss straight 3 flutes plain good shank 3/16 long 1/4";
    const Line line = last({first, "9/32 x 5/32 dull"});
    CHECK(cell(line, "material") == "high-speed steel");
    CHECK(cell(line, "flutes") == "3");
    CHECK(cell(line, "pilot_length") == "1/4");
    CHECK(cell(line, "condition") == "dull");
    CHECK(taken(line) == "fluted flutes material pilot_length shank_dia shank_kind");
    CHECK(cell(last({first, "9/32 x 5/32 dull", "5/16"}), "condition") == "good");
    CHECK(cell(last({first, "9/32 all shank 1/4", "5/16"}), "shank_dia") == "1/4");
    CHECK(cell(last({first, "9/32 shank unknown", "5/16"}), "shank_dia") == "3/16");
    CHECK(cell(last({first, "9/32 shank unknown"}), "shank_dia") == "");
    CHECK(cell(last({first, "9/32 all shank unknown", "5/16"}), "shank_dia") == "-");
}

TEST_CASE("what a body of that kind does not have is not taken over") {
    const std::string bodies = "1/4 all bore 3/16x3/4 mark #8-32 at .375 plain";
    const Line integral = last({bodies, "9/32 x 5/32"});
    CHECK(cell(integral, "pilot_kind") == "integral");
    CHECK(cell(integral, "bore") == "-");
    CHECK(cell(integral, "bore_how") == "-");
    CHECK(cell(integral, "set_screw") == "-");
    const Line removable = last({bodies, "9/32"});
    CHECK(cell(removable, "pilot_kind") == "removable");
    CHECK(cell(removable, "bore") == "3/16");
    CHECK(cell(removable, "bore_how") == "mark");
    CHECK(cell(removable, "bore_depth") == "3/4");
    CHECK(cell(removable, "fluted") == "-");
    CHECK(cell(last({bodies, "9/32 bore .1874"}), "bore_how") == "-");
    CHECK(cell(last({bodies, "9/32 no pilot"}), "bore") == "-");
    CHECK(cell(last({bodies, "pilot 9/64"}), "bore") == "-");
}

TEST_CASE("after all pilots the lines are of pilots, until all counterbores") {
    const std::string first = "9/64 shank 3/32 all pilots long 3/16";
    CHECK(last({first}).pilot);
    const Line line = last({first, "5/32"});
    CHECK(line.pilot);
    CHECK(cell(line, "pilot_dia") == "5/32");
    CHECK(cell(line, "pilot_length") == "3/16");
    CHECK_FALSE(last({first, "counterbore 1/4"}).pilot);
    CHECK(last({first, "counterbore 1/4", "5/32"}).pilot);
    CHECK_FALSE(last({first, "1/4 all counterbores", "5/32"}).pilot);
}

TEST_CASE("a new set begins afresh") {
    const std::string first = "set school place B4 1/4 mark all hss";
    CHECK(cell(last({first, "set school 9/32"}), "material") == "high-speed steel");
    const Line line = last({first, "set bought 9/32"});
    CHECK(cell(line, "material") == "-");
    CHECK(cell(line, "place") == "-");
    CHECK(cell(line, "cut_how") == "-");
    CHECK(taken(line).empty());
}

TEST_CASE("the unit of bare numbers is said for a line, or for all") {
    CHECK(last({"6 x 3.2 mm"}).unit == length::Unit::inch);
    CHECK(last({"mm 6x3.2"}).unit == length::Unit::millimetre);
    CHECK(last({"mm 6x3.2", "1/4"}).unit == length::Unit::inch);
    CHECK(last({"6x3.2 all mm", "8x4"}).unit == length::Unit::millimetre);
    CHECK(last({"6x3.2 all mm", "1/4 all inch", "8"}).unit == length::Unit::inch);
}

TEST_CASE("a size that is taken over keeps its unit") {
    const std::string first = "1/4 all shank .25 reach 1/2";
    CHECK(cell(last({first, "1/4"}), "shank_dia") == ".25");
    CHECK(cell(last({first, "mm 8"}), "shank_dia") == ".25 in");
    CHECK(cell(last({first, "mm 8"}), "reach") == "1/2");
    CHECK(cell(last({first, "8 all mm", "9"}), "shank_dia") == ".25 in");
    CHECK(cell(last({first, "8 all mm", "1/4 all inch"}), "shank_dia") == ".25 in");
    CHECK(cell(last({"mm 8 all shank 5", "1/4"}), "shank_dia") == "5 mm");
    CHECK(cell(last({"8 all mm shank 5", "9"}), "shank_dia") == "5");
}

TEST_CASE("what goes with a thing goes when it is said not to be there") {
    const std::string body = "1/4 all bore 3/16x3/4 mark #8-32 at .375";
    CHECK(cell(last({body, "9/32 bore unknown"}), "bore_depth") == "-");
    CHECK(cell(last({body, "9/32 bore unknown"}), "bore_how") == "-");
    CHECK(cell(last({body, "9/32 bore unknown"}), "set_screw") == "#8-32");
    CHECK(cell(last({body, "9/32 screw unknown"}), "retention") == "set screw");
    CHECK(cell(last({body, "9/32 screw unknown"}), "set_screw") == "");
    CHECK(cell(last({body, "9/32 held other"}), "set_screw") == "-");
    CHECK(cell(last({body, "9/32 held unknown"}), "set_screw_at") == "-");
    const std::string pilot = "pilot 1/4 all pilots shank 1/8x1/2 flat .1x.2x.015 mark";
    CHECK(cell(last({pilot, "9/32 shank unknown"}), "shank_length") == "-");
    CHECK(cell(last({pilot, "9/32 no flat"}), "flat_length") == "-");
    CHECK(cell(last({pilot, "9/32 flat .12"}), "flat_length") == ".2");
    CHECK(cell(last({pilot, "9/32 all flat unknown", "5/16"}), "flat_depth") == "-");
}

TEST_CASE("marked, said for all, is the cutting diameter of each") {
    CHECK(cell(last({"1/4 all marked", "9/32"}), "marking") == "9/32");
    CHECK(cell(last({"1/4 all marked", "9/32 m 9"}), "marking") == "9");
    CHECK(cell(last({"1/4 all marked", "9/32 m unknown"}), "marking") == "");
    CHECK(cell(last({"1/4 all marked", "rough"}), "marking") == "-");
}
