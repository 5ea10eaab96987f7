// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include <cstdint>
#include <string>
#include <vector>

#include "default_practice.hpp"
#include "refusal.hpp"
#include "trade/dimension.hpp"

using length::Length;
using length::Range;
using length::Unit;
using refusal::hint_of;
using refusal::message_of;
using trade::Feature;
using trade::How;

namespace {

constexpr Unit in = Unit::inch;
constexpr Unit mm = Unit::millimetre;

trade::Dimension read(const std::string& text, How how, Feature feature, Unit bare = in) {
    return trade::read_dimension(text, how, feature, bare, default_practice::practice());
}

// Ends in hundred-thousandths of an inch.
Range inches(std::int64_t lo, std::int64_t hi) {
    return {length::inches_e5(lo), length::inches_e5(hi)};
}
Range micrometres(std::int64_t lo, std::int64_t hi) {
    return {length::micrometres(lo), length::micrometres(hi)};
}

struct Case {
    std::string text;
    How how;
    Feature feature;
    Range range;
};

} // namespace

TEST_CASE("the limits of a bare value come from its method") {
    const std::vector<Case> cases{
        {".500", How::mark, Feature::cut_dia, inches(49700, 50100)},
        {"1/2", How::mark, Feature::cut_dia, inches(49700, 50100)},
        {".250", How::mark, Feature::pilot_dia, inches(24700, 25000)},
        {".1875", How::mark, Feature::pilot_shank_dia, inches(18450, 18750)},
        {".1875", How::mark, Feature::bore, inches(18750, 19050)},
        {".500", How::caliper, Feature::cut_dia, inches(49900, 50100)},
        {".500", How::micrometer, Feature::cut_dia, inches(49980, 50020)},
        {".1875", How::pin_gauge, Feature::bore, inches(18730, 18770)},
        {".500", How::test_hole, Feature::cut_dia, inches(49800, 50200)},
        {".500", How::guess, Feature::cut_dia, inches(43750, 56250)},
        {"1/2", How::caliper, Feature::cut_dia, inches(49900, 50100)},
        // Nobody said: a decimal.
        {".500", How::unstated, Feature::cut_dia, inches(49800, 50200)},
        {".750", How::unstated, Feature::reach, inches(74800, 75200)},
        // Nobody said: a fraction, on what carries a mark.
        {"1/2", How::unstated, Feature::cut_dia, inches(49700, 50100)},
        {"1/4", How::unstated, Feature::pilot_dia, inches(24600, 24900)},
        {"3/16", How::unstated, Feature::pilot_shank_dia, inches(18450, 18750)},
        {"3/16", How::unstated, Feature::bore, inches(18750, 19050)},
        // A mark where there is none is a value that nobody explained.
        {".750", How::mark, Feature::pilot_length, inches(74800, 75200)},
    };
    for (const auto& row : cases) {
        CAPTURE(row.text);
        CAPTURE(trade::to_text(row.how));
        CAPTURE(trade::to_text(row.feature));
        const auto found = read(row.text, row.how, row.feature);
        CHECK(found.range == row.range);
        CHECK(found.text == row.text);
        CHECK(found.how == row.how);
    }
}

TEST_CASE("a fraction on what carries no mark is within a 64th, as is a rule") {
    const Range expected{length::sixty_fourths(47), length::sixty_fourths(49)};
    for (const auto feature :
         {Feature::pilot_length, Feature::bore_depth, Feature::reach, Feature::shank_dia,
          Feature::head_dia, Feature::set_screw_at, Feature::flat_at, Feature::thickness}) {
        CHECK(read("3/4", How::unstated, feature).range == expected);
        CHECK(read("3/4", How::mark, feature).range == expected);
        CHECK(read("3/4", How::rule, feature).range == expected);
    }
}

TEST_CASE("a metric mark on a cutter runs from .08 mm under to z9 over (ISO 286-2)") {
    CHECK(read("18 mm", How::mark, Feature::cut_dia).range == micrometres(17'920, 18'103));
    CHECK(read("18", How::mark, Feature::cut_dia, mm).range == micrometres(17'920, 18'103));
    // Upper deviations of z9 by nominal: a size on a limit belongs to the lower step.
    const std::vector<std::pair<std::int64_t, std::int64_t>> upper{
        {3'000, 51},   {3'001, 65},   {6'000, 65},   {10'000, 78},  {10'400, 93},
        {14'000, 93},  {15'000, 103}, {20'000, 125}, {24'000, 125}, {26'000, 140},
        {33'000, 174}, {40'000, 174}, {50'000, 198}, {63'000, 246}, {80'000, 284}};
    for (const auto& [nominal, over] : upper) {
        CAPTURE(nominal);
        const length::Written written{length::micrometres(nominal), mm, false};
        CHECK(
            trade::limits_of(written, How::mark, Feature::cut_dia, default_practice::practice()) ==
            micrometres(nominal - 80, nominal + over));
    }
}

TEST_CASE("only a metric mark on a cutter goes by z9") {
    CHECK(read("18 mm", How::unstated, Feature::cut_dia).range ==
          Range{length::millimetres(18) - length::thousandths(2),
                length::millimetres(18) + length::thousandths(2)});
    CHECK(read("1/2", How::mark, Feature::cut_dia, mm).range == inches(49700, 50100));
}

// ISO 286-2: e8 of 6 is -20 and -38, of 9 -25 and -47 micrometres, as DIN 373 has its pilots;
// .02 mm for wear is common practice, no source.
TEST_CASE(
    "a pilot marked with a fraction or a plain metric size is so far under the hole it names") {
    CHECK(read("17/64", How::mark, Feature::pilot_dia).range ==
          Range{length::sixty_fourths(17) - length::thousandths(4),
                length::sixty_fourths(17) - length::thousandths(1)});
    CHECK(read("6 mm", How::mark, Feature::pilot_dia).range == micrometres(5'942, 5'980));
    CHECK(read("9", How::mark, Feature::pilot_dia, mm).range == micrometres(8'933, 8'975));
    // A decimal is the pilot's own size.
    CHECK(read(".264", How::mark, Feature::pilot_dia).range == inches(26100, 26400));
    CHECK(
        read("8.95 mm", How::mark, Feature::pilot_dia).range ==
        Range{micrometres(8'950, 8'950).lo - length::thousandths(3), micrometres(8'950, 8'950).hi});
}

TEST_CASE("limits in the cell stand whatever the method") {
    for (const auto how : {How::unstated, How::mark, How::caliper, How::guess}) {
        CHECK(read(".5935 +-.0002", how, Feature::cut_dia).range == inches(59330, 59370));
        CHECK(read(" .5935 +.0002 -.0003 ", how, Feature::cut_dia).range == inches(59320, 59370));
        CHECK(read("go .1250 no-go .1260", how, Feature::bore).range == inches(12500, 12600));
    }
    CHECK(read(" .5935 +-.0002 ", How::mark, Feature::cut_dia).text == ".5935 +-.0002");
}

TEST_CASE("a range never reaches zero") {
    const auto found = read("1/64", How::guess, Feature::flat_depth);
    CHECK(found.range.lo == length::micrometres(1));
    CHECK(found.range.hi == length::sixty_fourths(5));
}

TEST_CASE("sizes that a feature cannot have are refused with those it can") {
    CHECK(message_of([] { (void)read("9", How::mark, Feature::cut_dia); }) ==
          "cutting diameter: too large to be true: '9'");
    CHECK(hint_of([] { (void)read("9", How::mark, Feature::cut_dia); }) ==
          "from .030 in to 6.000 in; was another unit meant?");
    CHECK(message_of([] { (void)read(".01", How::mark, Feature::cut_dia); }) ==
          "cutting diameter: too small to be true: '.01'");
    CHECK(message_of([] { (void)read("0.1", How::mark, Feature::bore, mm); }) ==
          "bore: too small to be true: '0.1'");
    CHECK(message_of([] { (void)read("0", How::mark, Feature::bore); }) == "length: zero: '0'");
    CHECK(message_of([] { (void)read("1e9", How::mark, Feature::bore); }) ==
          "length: an exponent: '1e9'");
}

TEST_CASE("every feature has a name and takes a usual size") {
    std::vector<std::string> names;
    for (int i = 0; i <= static_cast<int>(Feature::thickness); ++i) {
        const auto feature = static_cast<Feature>(i);
        names.emplace_back(trade::to_text(feature));
        CAPTURE(names.back());
        CHECK(!names.back().empty());
        CHECK(read(".25", How::caliper, feature).range == inches(24900, 25100));
        CHECK(message_of([&] { (void)read("350", How::caliper, feature); }) ==
              names.back() + ": too large to be true: '350'");
    }
    CHECK(names.front() == "cutting diameter");
}
