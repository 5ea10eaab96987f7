// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is refused, with the very message; each ends in the text as it was written, and each hint
// says what would do.
#include <doctest/doctest.h>

#include <set>
#include <string>

#include "error/error.hpp"
#include "length/parse.hpp"

using length::Unit;

namespace {

struct Bad {
    std::string text;
    std::string why;
};

constexpr auto k_comma = "a comma; write a decimal point, and nothing between thousands";
constexpr auto k_steps = "fractions go by halves, 4ths, 8ths, 16ths, 32nds and 64ths";
constexpr auto k_units = "not understood after the number: only in, inch, \" and mm are units";
constexpr auto k_end = "not understood after the number: end it there";
constexpr auto k_no_number = "no number where one is expected";

const Bad k_bad_lengths[] = {
    {"", "nothing is written"},
    {"   ", "nothing is written"},
    {"0", "zero"},
    {"0.000", "zero"},
    {".0", "zero"},
    {"0 mm", "zero"},
    {"0/8", "zero"},
    {"-1", "less than zero"},
    {"-.375", "less than zero"},
    {"-3/8", "less than zero"},
    {"--1", "less than zero"},
    {"+1", "a sign before the number"},
    {"nan", "not a number"},
    {"NaN", "not a number"},
    {"inf", "not a number"},
    {"Infinity", "not a number"},
    {"-inf", "less than zero"},
    {"0x10", "a hexadecimal number"},
    {"0X1F", "a hexadecimal number"},
    {"1e3", "an exponent"},
    {"1.5E-1", "an exponent"},
    {"1/0", "a fraction over zero"},
    {"1-1/0", "a fraction over zero"},
    {"3/10", k_steps},
    {"1/3", k_steps},
    {"1/128", k_steps},
    {"5/1", k_steps},
    {"7/100", k_steps},
    {"1-9/8", "a whole number with a fraction of one or more"},
    {"1 8/8", "a whole number with a fraction of one or more"},
    {"3/", "a fraction without its lower number"},
    {"1-1/", "a fraction without its lower number"},
    {"/8", k_no_number},
    {"1/2/3", k_end},
    {"1,5", k_comma},
    {"1,500", k_comma},
    {"1,234.5", k_comma},
    {".3,75", k_comma},
    {",375", "a decimal comma; write a point"},
    {"1 ,5", k_comma},
    {"1.234.5", "a point out of place"},
    {"1..5", "no digit after the point"},
    {"5.", "no digit after the point"},
    {".", "a point without digits"},
    {". 5", "a point without digits"},
    {".123456", "finer than .00001 in"},
    {"1.0000001", "finer than .00001 in"},
    {"1.0000001 mm", "finer than .000001 mm"},
    {"394", "over 10 m"},
    {"10001 mm", "over 10 m"},
    {"10000.000001 mm", "over 10 m"},
    {"99999999999999999999", "over 10 m"},
    {"1/99999999999999999999", "over 10 m"},
    {"400-1/2", "over 10 m"},
    {"1/2 mm", "a fraction of a millimetre"},
    {"5 cm", k_units},
    {"5 m", k_units},
    {"5 ft", k_units},
    {"5 mil", k_units},
    {"5 um", k_units},
    {"5mmm", k_units},
    {"5 inchs", k_units},
    {"5 in mm", k_units},
    {"3/8 drill", k_units},
    {".375 about", k_units},
    {"5'", k_end},
    {"5 %", k_end},
    {"5;", k_end},
    {"1_000", k_end},
    {"$5", k_no_number},
    {"1 000", "a second number"},
    {"1/2 1/4", "a second number"},
    {"5 in 3", "a second number"},
    {".375.", "a point out of place"},
    {"abc", k_no_number},
    {"#7", k_no_number},
    {"F", k_no_number},
    {"M8", k_no_number},
    {"in", k_no_number},
    {"mm 5", k_no_number},
    {"\xC2\xBD", k_no_number},
    {"(5)", k_no_number},
    {"2-Jan", k_no_number},
};

const Bad k_bad_limits[] = {
    {".5 +.001", "limits are one + and one -, or +- before one"},
    {".5 -.001", "limits are one + and one -, or +- before one"},
    {".5 +.001 +.002", "limits are one + and one -, or +- before one"},
    {".5 -.001 -.002", "limits are one + and one -, or +- before one"},
    {".5 +-", "a number is missing at the end"},
    {".5 +.001 -", "a number is missing at the end"},
    {".5 +-.5", "the lower limit is not over zero"},
    {".5 +.1 -.6", "the lower limit is not over zero"},
    {".5 +- -.001", "less than zero"},
    {".5 +-.001 +-.002", "one limit alone; write both, or +- before one"},
    {".5 +-.000001", "finer than .00001 in"},
    {".5 +-1e-3", "an exponent"},
    {".5 +-,001", "a decimal comma; write a point"},
    {"0 +-.001", "zero"},
    {"0 +.001 -0", "zero"},
    {"+-.001", "a sign before the number"},
    {"go .125", "go without no-go"},
    {"go .125 .126", "go without no-go"},
    {"no-go .126", k_no_number},
    {"go .125 no-go", "a number is missing at the end"},
    {"go no-go .126", k_no_number},
    {"go 0 no-go .126", "zero"},
    {"go .125 no-go 0", "zero"},
    {"go .125 no-go .126 +-.001", "one limit alone; write both, or +- before one"},
    {".125 no-go .126", k_units},
    {".5 to .6", k_units},
    {".5 +-.001 junk", k_units},
};

// The message of a refusal; the hint must say what would do.
template <typename Read>
std::string refusal(const Read& read) {
    try {
        read();
    } catch (const error::BadData& problem) {
        CHECK(problem.code() == error::ExitCode::bad_data);
        CHECK(problem.hint().find("write 3/8, 1-1/2, .375, .375 in or 10 mm") == 0);
        return problem.what();
    }
    return "accepted";
}

std::string expected(const Bad& bad) {
    return "length: " + bad.why + ": '" + bad.text + "'";
}

} // namespace

TEST_CASE("bad lengths are refused with what is wrong") {
    std::set<std::string> texts;
    for (const auto& bad : k_bad_lengths) {
        texts.insert(bad.text);
        CAPTURE(bad.text);
        CHECK(refusal([&] { (void)length::parse_reading(bad.text, Unit::inch); }) == expected(bad));
        CHECK(refusal([&] { (void)length::parse_length(bad.text, Unit::inch); }) == expected(bad));
    }
    CHECK(texts.size() >= 60);
}

TEST_CASE("bad limits are refused with what is wrong") {
    for (const auto& bad : k_bad_limits) {
        CAPTURE(bad.text);
        CHECK(refusal([&] { (void)length::parse_reading(bad.text, Unit::inch); }) == expected(bad));
    }
}

TEST_CASE("good limits are refused where one plain length is expected") {
    for (const auto* text : {".5 +-.001", ".5 +.001 -.002"}) {
        CHECK(refusal([&] { (void)length::parse_length(text, Unit::inch); }) ==
              expected({text, "limits where one plain length is expected"}));
    }
}

TEST_CASE("a long text is quoted in part, between whole characters") {
    const std::string start(79, 'a');
    const auto message =
        refusal([&] { (void)length::parse_length(start + "\xC2\xB1" + start, Unit::inch); });
    CHECK(message == expected({start + "...", k_no_number}));
}
