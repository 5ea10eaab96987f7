// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <string>

#include "refusal.hpp"
#include "trade/size.hpp"

using length::Length;
using refusal::message_of;
using trade::SizeSystem;

namespace {

struct Spelling {
    std::string text;
    std::string size;
    std::string pitch;
    SizeSystem system;
};

const Spelling k_spellings[] = {
    {"#10", "#10", "", SizeSystem::number},
    {"# 10", "#10", "", SizeSystem::number},
    {"no 10", "#10", "", SizeSystem::number},
    {"No. 10", "#10", "", SizeSystem::number},
    {"number 10", "#10", "", SizeSystem::number},
    {"10", "#10", "", SizeSystem::number},
    {"0", "#0", "", SizeSystem::number},
    {"12", "#12", "", SizeSystem::number},
    {"#10-32", "#10", "32", SizeSystem::number},
    {"10-24", "#10", "24", SizeSystem::number},
    {"10 - 24", "#10", "24", SizeSystem::number},
    {"1-64", "#1", "64", SizeSystem::number},
    {"1-8", "1", "8", SizeSystem::inch},
    {"1-12", "1", "12", SizeSystem::inch},
    {"1-23", "1", "23", SizeSystem::inch},
    {"1-24", "#1", "24", SizeSystem::number},
    {"#1-8", "#1", "8", SizeSystem::number},
    {"5/16", "5/16", "", SizeSystem::inch},
    {"10/32", "5/16", "", SizeSystem::inch},
    {"5/16 in", "5/16", "", SizeSystem::inch},
    {"5/16\"", "5/16", "", SizeSystem::inch},
    {"1 in", "1", "", SizeSystem::inch},
    {"1\"-8", "1", "8", SizeSystem::inch},
    {"1-1/4", "1-1/4", "", SizeSystem::inch},
    {"1 1/4", "1-1/4", "", SizeSystem::inch},
    {"1 1/4 inch", "1-1/4", "", SizeSystem::inch},
    {"1-1/4-7", "1-1/4", "7", SizeSystem::inch},
    {"1 1/4-7", "1-1/4", "7", SizeSystem::inch},
    {"5/16-18", "5/16", "18", SizeSystem::inch},
    {"3/4-10 tpi", "3/4", "10", SizeSystem::inch},
    {"M8", "M8", "", SizeSystem::metric},
    {"m8", "M8", "", SizeSystem::metric},
    {"M8.0", "M8", "", SizeSystem::metric},
    {"M2.5", "M2.5", "", SizeSystem::metric},
    {"M8x1.25", "M8", "1.25", SizeSystem::metric},
    {"m8 x 1.250", "M8", "1.25", SizeSystem::metric},
    {"M3x.5", "M3", "0.5", SizeSystem::metric},
    {"M8\xC3\x97"
     "1",
     "M8", "1", SizeSystem::metric},
    {"M8-1.25", "M8", "1.25", SizeSystem::metric},
    {"8 mm", "M8", "", SizeSystem::metric},
    {"2.5mm", "M2.5", "", SizeSystem::metric},
    {".375", "3/8", "", SizeSystem::inch},
    {"0.250 in", "1/4", "", SizeSystem::inch},
    {".312-18", "5/16", "18", SizeSystem::inch},
    {".4375-14", "7/16", "14", SizeSystem::inch},
    {"1.25", "1-1/4", "", SizeSystem::inch},
    {".190", "#10", "", SizeSystem::number},
    {".164-32", "#8", "32", SizeSystem::number},
    {"2BA", "2BA", "", SizeSystem::ba},
    {"2 ba", "2BA", "", SizeSystem::ba},
};

const std::string k_bad[] = {
    "",          " ",         "x",        "#",          "#99",   "#-1",  "13",          "14-20",
    "14-24",     "0/4",       "5/0",      "3/10",       "1-9/8", ".26",  ".3",          "5/16-",
    "5/16--18",  "5/16-18-3", "5/16x",    "5/16-18x3/", "M",     "M0",   "M8x",         "M8x0",
    "M1,6",      "M200",      "M8x1x2x3", "17BA",       "2BA-5", "7 in", "1/4-20 long", "5/16-1/8",
    "M8 socket", "1/4 20",    "#10#",     "1.2.3",      "0 mm",
};

} // namespace

TEST_CASE("sizes and pitches are read in their usual spellings") {
    for (const auto& spelling : k_spellings) {
        CAPTURE(spelling.text);
        const auto thread = trade::parse_thread(spelling.text);
        CHECK(thread.size.text == spelling.size);
        CHECK(thread.size.system == spelling.system);
        CHECK(thread.pitch == spelling.pitch);
        if (spelling.pitch.empty())
            CHECK(trade::parse_size(spelling.text) == thread.size);
    }
}

TEST_CASE("a canonical size is read back as itself") {
    for (const auto& spelling : k_spellings) {
        CAPTURE(spelling.size);
        if (spelling.size == "1")
            continue; // bare, it is a number size
        CHECK(trade::parse_size(spelling.size).text == spelling.size);
    }
}

TEST_CASE("number sizes follow .060 + .013 n (ASME B1.1)") {
    for (int n = 0; n <= 12; ++n)
        CHECK(trade::parse_size(fmt::format("#{}", n)).diameter ==
              length::thousandths(60 + 13 * n));
    CHECK(trade::parse_size("#10").diameter == length::thousandths(190));
}

TEST_CASE("diameters of the other systems are theirs") {
    CHECK(trade::parse_size("5/16").diameter == length::sixty_fourths(20));
    CHECK(trade::parse_size("1-1/4").diameter == length::sixty_fourths(80));
    CHECK(trade::parse_size("M2.5").diameter == length::micrometres(2'500));
    CHECK(trade::parse_size("0BA").diameter == length::micrometres(6'000)); // BS 93
    CHECK(trade::parse_size("2BA").diameter == length::micrometres(4'700));
    CHECK(trade::parse_size("10BA").diameter == length::micrometres(1'700));
}

TEST_CASE("a length stands after the pitch, or where no pitch can be") {
    struct Row {
        std::string text, pitch, length;
        bool either; // the number after the x may be a pitch or a length
    };
    for (const auto& [text, pitch, length, either] :
         {Row{"1/4-20 x 3/4", "20", "3/4", false}, Row{"1/4-20x1-1/2", "20", "1-1/2", false},
          Row{"1/4-20 x 1 1/2 in", "20", "1 1/2 in", false}, Row{"1/4 x 3/4", "", "3/4", false},
          Row{"1/4 x 20", "20", "", true}, Row{"1/4 x 20 x 2", "20", "2", false},
          Row{"#10-32x.5", "32", ".5", false}, Row{"M8x1.25x30", "1.25", "30", false},
          Row{"M8x1.25", "1.25", "", true}, Row{"M6 x 20 mm", "20", "", true},
          Row{"M6-1 x 20mm", "1", "20mm", false}, Row{"2BA x 1/2", "", "1/2", false}}) {
        CAPTURE(text);
        const auto thread = trade::parse_thread(text);
        CHECK(thread.pitch == pitch);
        CHECK(thread.length == length);
        CHECK(thread.pitch_after_x == either);
    }
}

TEST_CASE("a bare whole number is remembered as one") {
    CHECK(trade::parse_thread("1-8").bare == 1);
    CHECK(trade::parse_thread("10").bare == 10);
    CHECK_FALSE(trade::parse_thread("#10").bare.has_value());
    CHECK_FALSE(trade::parse_thread("1 in").bare.has_value());
    CHECK(trade::inch_size(1)->text == "1");
    CHECK_FALSE(trade::inch_size(7).has_value());
}

TEST_CASE("what is no size is refused") {
    for (const auto& text : k_bad) {
        CAPTURE(text);
        CHECK(message_of([&] { (void)trade::parse_thread(text); }) ==
              "screw size: not understood: '" + text + "'");
    }
    CHECK(message_of([] { (void)trade::parse_size("10-24"); }) ==
          "screw size: a pitch is no part of it: '10-24'");
}

TEST_CASE("a set screw is read to its major diameter") {
    CHECK(trade::parse_set_screw("#8-32") == length::thousandths(164));
    CHECK(trade::parse_set_screw("8-32") == length::thousandths(164));
    CHECK(trade::parse_set_screw("#8") == length::thousandths(164));
    CHECK(trade::parse_set_screw("M5") == length::millimetres(5));
    CHECK(trade::parse_set_screw("M5x0.8") == length::millimetres(5));
    CHECK(trade::parse_set_screw("1/4-20") == length::thousandths(250));
    CHECK(message_of([] { (void)trade::parse_set_screw("small"); }) ==
          "set screw: not understood: 'small'");
}

TEST_CASE("pitches have one spelling") {
    CHECK(trade::canonical_pitch("18") == "18");
    CHECK(trade::canonical_pitch("1.250") == "1.25");
    CHECK(trade::canonical_pitch("1.0") == "1");
    CHECK(trade::canonical_pitch(".5") == "0.5");
    CHECK(trade::canonical_pitch("0.50") == "0.5");
    CHECK(trade::canonical_pitch("0").empty());
    CHECK(trade::canonical_pitch("1.2.3").empty());
    CHECK(trade::canonical_pitch("x").empty());
}
