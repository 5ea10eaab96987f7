// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a line of quick entry says, as the cells that a file would hold.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <string>
#include <vector>

#include "cli/intake/line.hpp"

using namespace cli::intake;

namespace {

// `column=cell` with a bar between, in alphabetical order; `pilot|` before those of a pilot.
std::string shown(const Line& line) {
    std::string text = line.pilot ? "pilot" : "";
    for (const auto& [column, cell] : line.cells)
        if (line.pilot || column != "kind" || cell != "counterbore")
            text += (text.empty() ? "" : "|") + column + '=' + cell;
    return text;
}

std::string cells(const std::string& text) {
    return shown(read_line(text, {}));
}

// `at: message`.
std::string refusal(const std::string& text, const Carry& carry = {}) {
    try {
        return "taken: " + shown(read_line(text, carry));
    } catch (const LineError& error) {
        return std::to_string(error.at) + ": " + error.what();
    }
}

} // namespace

TEST_CASE("a line is sizes and plain words, in any order") {
    const std::string expected =
        "condition=dull|cut_dia=13/16|cut_how=micrometer|flutes=4|pilot_dia=17/32|"
        "pilot_how=micrometer|pilot_kind=integral|place=B4|shank_dia=5/8";
    CHECK(cells("13/16 x 17/32 shank 5/8 flutes 4 mic place B4 dull") == expected);
    CHECK(cells("dull place B4 4 flutes shank 5/8 13/16 x 17/32 mic") == expected);
    CHECK(cells("place B4; 4f s5/8; dull cut 13/16 pilot 17/32 mic") == expected);
    CHECK(cells("13/16X17/32 mic s5/8 f4 p B4 blunt") == expected);
    CHECK(cells("DULL Place B4 13/16 \xC3\x97 17/32 Micrometer SHANK 5/8 Flutes 4") == expected);
}

TEST_CASE("every order of a line's parts says the same") {
    std::vector<std::string> parts{"1/2mic x .2510mic x 3/8", "shank 1/2", "3 flutes", "dull",
                                   "place rack 1, hole 3",    "hss",       "reach 7/8"};
    std::sort(parts.begin(), parts.end());
    const auto line_of = [&parts] {
        std::string text;
        for (const std::string& part : parts)
            text += part + ' ';
        return text;
    };
    const std::string expected = cells(line_of());
    std::size_t differ = 0;
    while (std::next_permutation(parts.begin(), parts.end()))
        differ += cells(line_of()) == expected ? 0 : 1;
    CHECK(differ == 0);
}

TEST_CASE("whatever is typed is understood or refused with a place in the line") {
    const std::vector<std::string> pieces{
        "3/4",   ".5",    "1 1/2",  "x",   "X 3",  "mm",   "in",     "in 3",  "mic", "mark", "all",
        "pilot", "p",     "B4",     "set", "note", "m",    ";",      ",",     "+-",  "+.01", "-",
        "go",    "no-go", "s",      "f",   "unk",  "lost", "#8",     "M3",    "\"",  "\xC3", "\xFF",
        "(",     "3f",    "number", "mt",  "at",   "flat", "bore",   "drill", "F",   "#7",   "no",
        "dull",  "cut",   "",       "\t",  "\x1b", "0",    "unknown"};
    std::mt19937 dice(7);
    std::uniform_int_distribution<std::size_t> any(0, pieces.size() - 1);
    Carry carry;
    std::size_t understood = 0;
    for (int i = 0; i < 50'000; ++i) {
        std::string text;
        for (std::size_t n = any(dice) % 9; n > 0; --n)
            text += pieces[any(dice)] + (any(dice) % 4 == 0 ? "" : " ");
        try {
            carry = read_line(text, carry).next;
            ++understood;
        } catch (const LineError& error) {
            INFO(text);
            REQUIRE(error.at <= text.size());
            REQUIRE(std::string(error.what()) != "");
        }
    }
    CHECK(understood > 1'000);
}

TEST_CASE("sizes are taken as drawings write them") {
    struct Case {
        std::string line;
        std::string expected;
    };
    const std::vector<Case> cases{
        {"3/4", "cut_dia=3/4"},
        {"1-3/16", "cut_dia=1-3/16"},
        {"1 3/16", "cut_dia=1 3/16"},
        {"1", "cut_dia=1"},
        {".375", "cut_dia=.375"},
        {"0.375 in", "cut_dia=0.375 in"},
        {"3/8\"", "cut_dia=3/8\""},
        {"10mm", "cut_dia=10mm"},
        {".5935+-.0002", "cut_dia=.5935 +-.0002"},
        {".5935 \xC2\xB1.0002", "cut_dia=.5935 \xC2\xB1.0002"},
        {".5935 +.0002 -.0003", "cut_dia=.5935 +.0002 -.0003"},
        {".5935-.0003+.0002", "cut_dia=.5935 -.0003 +.0002"},
        {"4.008 mm +-.008 mm", "cut_dia=4.008 mm +-.008 mm"},
        {"go .1250 no-go .1260", "cut_dia=go .1250 no-go .1260"},
        {"bore go .3750 no-go .3756 x 1-1/4",
         "bore=go .3750 no-go .3756|bore_depth=1-1/4|pilot_kind=removable"},
        {"13/16x17/32x3/8", "cut_dia=13/16|pilot_dia=17/32|pilot_kind=integral|pilot_length=3/8"},
        {"6 x 3.2 x 4 mm", "cut_dia=6 mm|pilot_dia=3.2 mm|pilot_kind=integral|pilot_length=4 mm"},
        {"1/2 x 8 mm", "cut_dia=1/2|pilot_dia=8 mm|pilot_kind=integral"},
    };
    for (const Case& c : cases) {
        INFO(c.line);
        CHECK(cells(c.line) == c.expected);
    }
}

TEST_CASE("every kind of tool is as short to say") {
    CHECK(cells("3/4 bore 1/4x1 #10-32 at .530") ==
          "bore=1/4|bore_depth=1|cut_dia=3/4|pilot_kind=removable|retention=set screw|"
          "set_screw=#10-32|set_screw_at=.530");
    CHECK(cells("15 mm bore 4 mm M3") ==
          "bore=4 mm|cut_dia=15 mm|pilot_kind=removable|retention=set screw|set_screw=M3");
    CHECK(cells("3/4 removable") == "cut_dia=3/4|pilot_kind=removable");
    CHECK(cells("3/4 screw") == "cut_dia=3/4|pilot_kind=removable|retention=set screw");
    CHECK(cells("3/4 lost") == "cut_dia=3/4|note=pilot lost|pilot_kind=removable");
    CHECK(cells("3/4 lost n nose bent") ==
          "cut_dia=3/4|note=pilot lost; nose bent|pilot_kind=removable");
    CHECK(cells("3/4 no pilot") == "cut_dia=3/4|pilot_kind=none");
    CHECK(cells("3/4 pilot unknown") == "cut_dia=3/4|pilot_kind=unknown");
    CHECK(cells("sf 5/8x17/64") ==
          "cut_dia=5/8|kind=spotfacer|pilot_dia=17/64|pilot_kind=integral");
    CHECK(cells("back 1-1/4") == "cut_dia=1-1/4|kind=back spotfacer");
    CHECK(cells("unknown .6240") == "cut_dia=.6240|kind=unknown");
    CHECK(cells("other 1/2 f2") == "cut_dia=1/2|flutes=2|kind=other");
    CHECK(cells("1-3/16 mt2") == "cut_dia=1-3/16|shank_kind=Morse 2");
    CHECK(cells("note slot drill, used for spotting") == "note=slot drill, used for spotting");
}

TEST_CASE("a loose pilot begins with that word") {
    CHECK(cells("pilot 9/64x3/16 s3/32x3/8 mark no flat in 32 holds") ==
          "pilot|flat_at=none|in_body=32|pilot_dia=9/64|pilot_how=mark|pilot_length=3/16|"
          "shank_dia=3/32|shank_how=mark|shank_length=3/8|tried=slides and holds");
    CHECK(cells("set school pilot .2640 s.1246 mic flat .100x.200x.015") ==
          "pilot|flat_at=.100|flat_depth=.015|flat_length=.200|pilot_dia=.2640|"
          "pilot_how=micrometer|set=school|shank_dia=.1246|shank_how=micrometer");
    CHECK(cells("loose pilot 9/64 s3/32") == "pilot|pilot_dia=9/64|shank_dia=3/32");
    CHECK(cells("9/64 s3/32 in 32") == "pilot|in_body=32|pilot_dia=9/64|shank_dia=3/32");
    // Later in a line the word names the pilot of the body.
    CHECK(cells("3/4 pilot 1/2 x 3/8") ==
          "cut_dia=3/4|pilot_dia=1/2|pilot_kind=integral|pilot_length=3/8");
    CHECK(cells("pilot 1/2 cut 3/4") == "cut_dia=3/4|pilot_dia=1/2|pilot_kind=integral");
}

TEST_CASE("a photo or a note is enough") {
    CHECK(cells("photo shelf/IMG_0041.jpg") == "note=photo shelf/IMG_0041.jpg");
    CHECK(cells("n brass plug in the nose") == "note=brass plug in the nose");
    CHECK(cells("photo 7.jpg; lost; n odd teeth; brass") ==
          "note=photo 7.jpg; pilot lost; odd teeth; brass|pilot_kind=removable");
}

TEST_CASE("a kind is only meant where something of the tool is said") {
    CHECK(read_line("3/4", {}).cells.at("kind") == "counterbore");
    CHECK(read_line("flutes 3", {}).cells.at("kind") == "counterbore");
    CHECK(read_line("photo 7.jpg", {}).cells.count("kind") == 0);
    CHECK(read_line("rough; m 12", {}).cells.count("kind") == 0);
}

TEST_CASE("a how word tells of the sizes before it, back to the last one") {
    CHECK(cells("1/2 mark x .3267 mic") ==
          "cut_dia=1/2|cut_how=mark|pilot_dia=.3267|pilot_how=micrometer|pilot_kind=integral");
    // Written against a size, it tells of that one alone.
    CHECK(cells("1/2x.3267mic") ==
          "cut_dia=1/2|pilot_dia=.3267|pilot_how=micrometer|pilot_kind=integral");
    CHECK(cells("25/32guess x17/32cal f3") ==
          "cut_dia=25/32|cut_how=guess|flutes=3|pilot_dia=17/32|pilot_how=caliper|"
          "pilot_kind=integral");
    CHECK(cells("3/4 bore .1253 pin gauge") ==
          "bore=.1253|bore_how=pin gauge|cut_dia=3/4|cut_how=pin gauge|pilot_kind=removable");
    CHECK(cells("3/4 test hole") == "cut_dia=3/4|cut_how=test hole");
}

TEST_CASE("a place ends at a word that lines know, unless a comma holds it together") {
    CHECK(cells("3/4 place rack 1, hole 1 dull") ==
          "condition=dull|cut_dia=3/4|place=rack 1, hole 1");
    CHECK(cells("place rack 1, hole 1 13/16 x 17/32") ==
          "cut_dia=13/16|pilot_dia=17/32|pilot_kind=integral|place=rack 1, hole 1");
    CHECK(cells("3/4 p drawer 1, back; fair") == "condition=fair|cut_dia=3/4|place=drawer 1, back");
    CHECK(cells("3/4 p pilot tin, school") == "cut_dia=3/4|place=pilot tin, school");
    CHECK(cells("set works store place box B, hole 1 .375") ==
          "cut_dia=.375|place=box B, hole 1|set=works store");
    CHECK(cells("3/4 p rack 1, hole 22 m 4") == "cut_dia=3/4|marking=4|place=rack 1, hole 22");
    CHECK(cells("3/4 p \"drawer 1 back\" fair") ==
          "condition=fair|cut_dia=3/4|place=drawer 1 back");
    CHECK(refusal("3/4 p \"drawer") == "6: a quote that does not end");
    CHECK(cells("3/4 p B4, dull") == "cut_dia=3/4|place=B4, dull");
}

TEST_CASE("other texts run to a semicolon or the end") {
    CHECK(cells("3/4 w sharpen; n odd; very") == "cut_dia=3/4|note=odd; very|work=sharpen");
    CHECK(cells("3/4 w sharpen; w clean") == "cut_dia=3/4|work=sharpen; clean");
    CHECK(cells("3/4 m 1/4 +1/64; w polish the pilot; n picked up, in aluminium") ==
          "cut_dia=3/4|marking=1/4 +1/64|note=picked up, in aluminium|work=polish the pilot");
    CHECK(cells("3/4 marked") == "cut_dia=3/4|marking=3/4");
    CHECK(cells("3/4 material tool steel, hardened; dull") ==
          "condition=dull|cut_dia=3/4|material=tool steel, hardened");
}

TEST_CASE("words may be cut short where only one can be meant") {
    CHECK(cells("3/4 rem") == "cut_dia=3/4|pilot_kind=removable");
    CHECK(cells("counterb 3/4 sha 1/2 dirt") == "condition=dirty|cut_dia=3/4|shank_dia=1/2");
    CHECK(cells("spot 3/4") == "cut_dia=3/4|kind=spotfacer");
    CHECK(refusal("3/4 unk") == "taken: cut_dia=3/4|kind=unknown");
    CHECK(refusal("3/4 pla") == "4: not a word of a line: pla");
}

TEST_CASE("what cannot be understood says where") {
    struct Case {
        std::string line;
        std::string expected;
    };
    const std::vector<Case> cases{
        {"13/16 x 17/32 shnk 5/8", "14: not a word of a line: shnk"},
        {"3/4 x", "5: no size after x"},
        {"x 1/2", "0: no size before x: x"},
        {"pilot 9/64 marked 3", "11: a loose pilot has none: marked"},
        {"3/4 x dull", "6: no size after x"},
        {"3/4 1/2", "4: a size with neither a name nor an x before it: 1/2"},
        {"13/16x17/32x3/8x1", "16: one size too many: 1"},
        {"3/4 shank", "9: a size should follow: shank"},
        {"3/4 flutes many", "11: a whole number should follow: flutes"},
        {"3/4 place", "9: a name should follow: place"},
        {"3/4 note", "8: some words should follow: note"},
        {"mark 3/4", "0: no size stands before it: mark"},
        {"7,5", "1: a comma in a number"},
        {".5935 +.0002", "12: limits are one + and one -, or +- before one"},
        {".5935 +-", "8: no limit after +-"},
        {"go .1250", "8: go without no-go"},
        {"3/4 dull fair", "9: said twice: condition"},
        {"counterbore 3/4 flat .100", "21: a body has none: flat at"},
        {"set school", "0: nothing about a tool in this line"},
        {"set school place B4 all hss", "0: nothing about a tool in this line"},
        {"dull all 1/2", "9: does not hold for all: cut"},
        {"3/4 marked; all number 7", "16: does not hold for all: number"},
        {"fair marked", "5: marked with a size that is not known: marked"},
        {"3/4 %", "4: not a word of a line: %"},
        {"", "0: nothing about a tool in this line"},
    };
    for (const Case& c : cases) {
        INFO(c.line);
        CHECK(refusal(c.line) == c.expected);
    }
}

TEST_CASE("a pilot is marked with a drill by its number, or by its letter after the word drill") {
    CHECK(cells("pilot #7 shank 3/32") == "pilot|pilot_dia=#7|shank_dia=3/32");
    CHECK(cells("pilot drill F x 1/4 shank 3/32") ==
          "pilot|pilot_dia=F|pilot_length=1/4|shank_dia=3/32");
    CHECK(cells("pilot Drill #7x1/4") == "pilot|pilot_dia=#7|pilot_length=1/4");
    CHECK(cells("3/4 x #7") == "cut_dia=3/4|pilot_dia=#7|pilot_kind=integral");
    CHECK(cells("3/4 x drill f x 1/4 3f") ==
          "cut_dia=3/4|flutes=3|pilot_dia=F|pilot_kind=integral|pilot_length=1/4");
    CHECK(cells("3/4 pilot drill F; dull") ==
          "condition=dull|cut_dia=3/4|pilot_dia=F|pilot_kind=integral");
    const Line all = read_line("drill F shank 3/32 all pilots", {});
    CHECK(shown(read_line("drill #7 shank 3/32", all.next)) == "pilot|pilot_dia=#7|shank_dia=3/32");
    CHECK(shown(read_line("7 x 6 x 10 mm", {})) == cells("7 mm x 6 mm x 10 mm"));
    CHECK(cells("20 x drill F x 10 mm") ==
          "cut_dia=20 mm|pilot_dia=F|pilot_kind=integral|pilot_length=10 mm");
}

TEST_CASE("what was a word or a set screw stays one beside the names of drills") {
    CHECK(cells("7/8 bore 1/4 x 1 mark #10-32") ==
          "bore=1/4|bore_depth=1|bore_how=mark|cut_dia=7/8|cut_how=mark|pilot_kind=removable|"
          "retention=set screw|set_screw=#10-32");
    CHECK(cells("7/8 bore 1/4 #8") ==
          "bore=1/4|cut_dia=7/8|pilot_kind=removable|retention=set screw|set_screw=#8");
    CHECK(cells("7/8 f 3") == "cut_dia=7/8|flutes=3");
    CHECK(cells("7/8 place drill press, hole 3") == "cut_dia=7/8|place=drill press, hole 3");
    CHECK(cells("7/8 place B") == "cut_dia=7/8|place=B");
}

TEST_CASE("a mark is a mark, whatever is measured beside it") {
    CHECK(cells("pilot drill F shank .0938 mic") ==
          "pilot|pilot_dia=F|shank_dia=.0938|shank_how=micrometer");
    CHECK(cells("pilot drill F mark shank .0938 mic") ==
          "pilot|pilot_dia=F|pilot_how=mark|shank_dia=.0938|shank_how=micrometer");
    // Said of it, it goes to its cell, where it is refused.
    CHECK(cells("pilot drill F mic") == "pilot|pilot_dia=F|pilot_how=micrometer");
    CHECK(cells("3/4 x drill F mic x 1/4") ==
          "cut_dia=3/4|cut_how=micrometer|pilot_dia=F|pilot_how=micrometer|pilot_kind=integral|"
          "pilot_length=1/4");
    const Line before = read_line("pilot 9/64 mic", {});
    CHECK(shown(read_line("pilot drill F", before.next)) == "pilot|pilot_dia=F");
    CHECK(shown(read_line("pilot #7", before.next)) == "pilot|pilot_dia=#7");
}

TEST_CASE("a letter alone is no drill, and the refusal says how one is written") {
    const auto hint = [](const std::string& text) -> std::string {
        try {
            static_cast<void>(read_line(text, {}));
        } catch (const LineError& error) {
            return error.hint();
        }
        return "taken";
    };
    CHECK(refusal("pilot F shank 3/32") == "6: not a word of a line: F");
    CHECK(hint("pilot F shank 3/32") ==
          "help shows the words; a note takes any; the drill on a pilot is written drill F");
    CHECK(refusal("pilot f shank 3/32") == "8: a whole number should follow: f");
    CHECK(hint("pilot f shank 3/32") ==
          "for instance f 3; the drill on a pilot is written drill F");
    CHECK(refusal("3/4 x F") == "6: no size after x");
    CHECK(hint("3/4 x F") ==
          "for instance 13/16 x 17/32; a pilot marked with a drill: x #7, x drill F");
    CHECK(refusal("pilot drill 7") == "12: no drill's name after drill");
    CHECK(refusal("pilot drill #10-32") == "12: no drill's name after drill");
    CHECK(refusal("pilot drill") == "11: no drill's name after drill");
    CHECK(refusal("pilot drill FF") == "12: no drill's name after drill");
    CHECK(refusal("drill F") == "0: only a pilot is marked with a drill: F");
    CHECK(refusal("3/4 x 1/2 x #7") == "12: only a pilot is marked with a drill: #7");
    CHECK(refusal("3/4 bore drill F") == "9: a size should follow: bore");
}
