// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a shop writes, and what it is worth in nanometres.
#include <doctest/doctest.h>

#include <cstdint>
#include <string>

#include "error/error.hpp"
#include "length/parse.hpp"

using length::Length;
using length::Unit;

namespace {

struct Spelling {
    std::string text;
    Unit bare;
    std::int64_t nm;
    Unit unit;
    bool fraction;
    bool unit_said;
};

const Spelling k_spellings[] = {
    {"3/8", Unit::inch, 9'525'000, Unit::inch, true, false},
    {"3/8\"", Unit::inch, 9'525'000, Unit::inch, true, true},
    {"3/8 in", Unit::millimetre, 9'525'000, Unit::inch, true, true},
    {"3/8", Unit::millimetre, 9'525'000, Unit::inch, true, false},
    {"6/16", Unit::inch, 9'525'000, Unit::inch, true, false},
    {"1/64", Unit::inch, 396'875, Unit::inch, true, false},
    {"1-1/2", Unit::inch, 38'100'000, Unit::inch, true, false},
    {"1 1/2", Unit::inch, 38'100'000, Unit::inch, true, false},
    {"1  1/2 inch", Unit::inch, 38'100'000, Unit::inch, true, true},
    {"3/2", Unit::inch, 38'100'000, Unit::inch, true, false},
    {".375", Unit::inch, 9'525'000, Unit::inch, false, false},
    {".375000", Unit::inch, 9'525'000, Unit::inch, false, false},
    {"0.375 in", Unit::millimetre, 9'525'000, Unit::inch, false, true},
    {"0.375in.", Unit::millimetre, 9'525'000, Unit::inch, false, true},
    {"0.375 INCHES", Unit::millimetre, 9'525'000, Unit::inch, false, true},
    {"  2 ", Unit::inch, 50'800'000, Unit::inch, false, false},
    {".00001", Unit::inch, 254, Unit::inch, false, false},
    {"10 mm", Unit::inch, 10'000'000, Unit::millimetre, false, true},
    {"10mm", Unit::inch, 10'000'000, Unit::millimetre, false, true},
    {"10 MM", Unit::inch, 10'000'000, Unit::millimetre, false, true},
    {"10", Unit::millimetre, 10'000'000, Unit::millimetre, false, false},
    {".35", Unit::millimetre, 350'000, Unit::millimetre, false, false},
    {"0.000001", Unit::millimetre, 1, Unit::millimetre, false, false},
    {"000.5", Unit::inch, 12'700'000, Unit::inch, false, false},
    {"10000 mm", Unit::inch, 10'000'000'000, Unit::millimetre, false, true},
};

struct Limited {
    std::string text;
    Unit bare;
    std::int64_t nominal;
    std::int64_t lo;
    std::int64_t hi;
    Unit unit;
};

const Limited k_limited[] = {
    {".5935 +-.0002", Unit::inch, 15'074'900, 15'069'820, 15'079'980, Unit::inch},
    {".5935 +/- .0002", Unit::inch, 15'074'900, 15'069'820, 15'079'980, Unit::inch},
    {".5935 \xC2\xB1.0002", Unit::inch, 15'074'900, 15'069'820, 15'079'980, Unit::inch},
    {".5935+-.0002", Unit::inch, 15'074'900, 15'069'820, 15'079'980, Unit::inch},
    {".5935 +.0002 -.0003", Unit::inch, 15'074'900, 15'067'280, 15'079'980, Unit::inch},
    {".5935 -.0003 +.0002", Unit::inch, 15'074'900, 15'067'280, 15'079'980, Unit::inch},
    {".5935 + .0002 - .0003", Unit::inch, 15'074'900, 15'067'280, 15'079'980, Unit::inch},
    {"1/2 +.001 -0", Unit::inch, 12'700'000, 12'700'000, 12'725'400, Unit::inch},
    {"1-1/2 -1/64 +0", Unit::inch, 38'100'000, 37'703'125, 38'100'000, Unit::inch},
    {".5 +-0", Unit::inch, 12'700'000, 12'700'000, 12'700'000, Unit::inch},
    {"go .1250 no-go .1260", Unit::inch, 3'187'700, 3'175'000, 3'200'400, Unit::inch},
    {"go .1260 no-go .1250", Unit::inch, 3'187'700, 3'175'000, 3'200'400, Unit::inch},
    {"Go .1250 No Go .1260", Unit::inch, 3'187'700, 3'175'000, 3'200'400, Unit::inch},
    // A bare limit takes its value's unit.
    {"10 mm +-.02", Unit::inch, 10'000'000, 9'980'000, 10'020'000, Unit::millimetre},
    {".5 in +-.001", Unit::millimetre, 12'700'000, 12'674'600, 12'725'400, Unit::inch},
    {"3/8 +-.001", Unit::millimetre, 9'525'000, 9'499'600, 9'550'400, Unit::inch},
    // A bare value takes its limit's.
    {"10 +-.02 mm", Unit::inch, 10'000'000, 9'980'000, 10'020'000, Unit::millimetre},
    {"10 +.02 mm -0", Unit::inch, 10'000'000, 10'000'000, 10'020'000, Unit::millimetre},
    {"10 +.02 -.01 mm", Unit::inch, 10'000'000, 9'990'000, 10'020'000, Unit::millimetre},
    {"go 3.2 no-go 3.3 mm", Unit::inch, 3'250'000, 3'200'000, 3'300'000, Unit::millimetre},
    // Each has its own.
    {".5 in +-.02 mm", Unit::millimetre, 12'700'000, 12'680'000, 12'720'000, Unit::inch},
    // Neither has one.
    {"10 +-.02", Unit::millimetre, 10'000'000, 9'980'000, 10'020'000, Unit::millimetre},
};

} // namespace

TEST_CASE("lengths are read as a shop writes them") {
    for (const auto& spelling : k_spellings) {
        CAPTURE(spelling.text);
        const auto found = length::parse_length(spelling.text, spelling.bare);
        CHECK(found.value.nm() == spelling.nm);
        CHECK(found.unit == spelling.unit);
        CHECK(found.fraction == spelling.fraction);
        CHECK(found.unit_said == spelling.unit_said);
    }
}

TEST_CASE("a length without limits is read the same by both readers") {
    for (const auto& spelling : k_spellings) {
        CAPTURE(spelling.text);
        const auto found = length::parse_reading(spelling.text, spelling.bare);
        CHECK(found.nominal.value.nm() == spelling.nm);
        CHECK(found.nominal.unit == spelling.unit);
        CHECK_FALSE(found.limits.has_value());
    }
}

TEST_CASE("limits stand around their value in its unit or their own") {
    for (const auto& limited : k_limited) {
        CAPTURE(limited.text);
        const auto found = length::parse_reading(limited.text, limited.bare);
        CHECK(found.nominal.value.nm() == limited.nominal);
        CHECK(found.nominal.unit == limited.unit);
        REQUIRE(found.limits.has_value());
        CHECK(found.limits->lo.nm() == limited.lo);
        CHECK(found.limits->hi.nm() == limited.hi);
    }
}

TEST_CASE("an allowance may be zero where a length may not") {
    for (const auto* text : {"0", "0 in", ".000", "0 mm", "0/8"}) {
        CAPTURE(text);
        CHECK(length::parse_length_or_zero(text, Unit::inch).value == Length{});
    }
    CHECK(length::parse_length_or_zero("1/64", Unit::inch).value == length::sixty_fourths(1));
}

TEST_CASE("zero is a reading only where it is asked for") {
    CHECK(length::parse_reading_or_zero("0 in", length::Unit::millimetre).nominal.value ==
          length::Length());
    CHECK(length::parse_reading_or_zero(".250 +-.001", length::Unit::inch).limits.has_value());
    CHECK_THROWS_AS((void)length::parse_reading("0 in", length::Unit::inch), error::BadData);
}
