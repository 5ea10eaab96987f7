// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "trade/drill.hpp"

using length::inches_e5;
using length::Length;
using trade::Oversize;

namespace {

// Machinery's Handbook, "Oversize Diameters in Drilling", from memory: 1/16, 1/8, 1/4, 1/2, 3/4, 1.
const std::vector<Oversize> k_oversize{
    {length::sixty_fourths(4), inches_e5(100), inches_e5(150), inches_e5(200)},
    {length::sixty_fourths(8), inches_e5(100), inches_e5(300), inches_e5(450)},
    {length::sixty_fourths(16), inches_e5(250), inches_e5(400), inches_e5(650)},
    {length::sixty_fourths(32), inches_e5(300), inches_e5(500), inches_e5(800)},
    {length::sixty_fourths(48), inches_e5(300), inches_e5(500), inches_e5(800)},
    {length::sixty_fourths(64), inches_e5(400), inches_e5(700), inches_e5(900)},
};

void check(Length drill, Length least, Length mean, Length most) {
    CAPTURE(drill.nm());
    const auto found = trade::oversize_at(k_oversize, drill);
    CHECK(found.drill == drill);
    CHECK(found.least == least);
    CHECK(found.mean == mean);
    CHECK(found.most == most);
}

} // namespace

TEST_CASE("oversize at a row is the row") {
    for (const auto& row : k_oversize)
        check(row.drill, row.least, row.mean, row.most);
}

TEST_CASE("oversize between rows is in proportion") {
    // 3/8 is half way from 1/4 to 1/2, 5/16 a quarter.
    check(length::sixty_fourths(24), inches_e5(275), inches_e5(450), inches_e5(725));
    check(length::sixty_fourths(20), Length::from_nm(66'675), Length::from_nm(107'950),
          Length::from_nm(174'625));
}

TEST_CASE("oversize is rounded to the nearest nanometre, half away from zero") {
    const auto row = [](std::int64_t drill, std::int64_t size) {
        const auto length = Length::from_nm(size);
        return Oversize{Length::from_nm(drill), length, length, length};
    };
    const auto mean = [&](std::int64_t from, std::int64_t to, std::int64_t at) {
        return trade::oversize_at({row(100, from), row(104, to)}, Length::from_nm(at)).mean.nm();
    };
    CHECK(mean(10, 11, 101) == 10);
    CHECK(mean(10, 11, 102) == 11);
    CHECK(mean(10, 11, 103) == 11);
    CHECK(mean(11, 10, 101) == 11);
    CHECK(mean(11, 10, 102) == 10);
}

TEST_CASE("oversize is flat outside the rows") {
    check(length::sixty_fourths(1), inches_e5(100), inches_e5(150), inches_e5(200));
    check(length::sixty_fourths(128), inches_e5(400), inches_e5(700), inches_e5(900));
    CHECK_THROWS_AS((void)trade::oversize_at({}, length::sixty_fourths(1)), std::invalid_argument);
}

TEST_CASE("drill names have one spelling each") {
    const std::vector<std::pair<std::string, std::string>> spellings{
        {"#7", "#7"},          {"# 7", "#7"},      {"no 7", "#7"},       {"No.7", "#7"},
        {"number 07", "#7"},   {"#80", "#80"},     {"f", "F"},           {"F", "F"},
        {"letter F", "F"},     {"drill f", "F"},   {"F drill", "F"},     {"drill #7", "#7"},
        {"no. 7 drill", "#7"}, {"#98", "#98"},     {"9/32", "9/32"},     {"18/64", "9/32"},
        {"9/32 in", "9/32"},   {"9/32\"", "9/32"}, {"1-1/16", "1-1/16"}, {"1 1/16", "1-1/16"},
        {"1 in", "1"},         {"7mm", "7 mm"},    {"7 mm", "7 mm"},     {"7.0 mm", "7 mm"},
        {"6.8mm", "6.8 mm"},
    };
    for (const auto& [text, name] : spellings) {
        CAPTURE(text);
        CHECK(trade::canonical_drill_name(text) == name);
        CHECK(trade::canonical_drill_name(name) == (name == "1" ? "" : name));
    }
}

TEST_CASE("only numbers and letters are the names of number and letter drills") {
    CHECK(trade::number_or_letter_drill("No. 7") == "#7");
    CHECK(trade::number_or_letter_drill("letter f") == "F");
    for (const auto* text : {"9/32", "7 mm", "1 in", "7", ".2570", "#7 +-.001", "#10-32", "go"}) {
        CAPTURE(text);
        CHECK(trade::number_or_letter_drill(text).empty());
    }
}

TEST_CASE("what is no drill's name gives none") {
    for (const auto* text :
         {"", "#", "drill", "drill 7", "drill  ", "7 drill", "letter", "#7a", "#-7", "7", "ff",
          ".2812", ".2812 in", "0.5 in", "9/30", "-7 mm", "7 cm", "close", "9/32 +-.001"}) {
        CAPTURE(text);
        CHECK(trade::canonical_drill_name(text).empty());
    }
}
