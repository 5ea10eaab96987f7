// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Sizes as the shop and the drawing write them.
#include <doctest/doctest.h>

#include "bench.hpp"
#include "job/callout.hpp"
#include "job/shop_text.hpp"

using job::Grain;
using length::Unit;

namespace {

match::Answer answer() {
    match::Answer answer;
    answer.drill = {"21/64", trade::DrillKind::fraction, length::sixty_fourths(21)};
    answer.hole = bench::tenths(3281, 3351);
    answer.counterbore = bench::tenths(5283, 5323);
    answer.depth = bench::tenths(3281);
    return answer;
}

} // namespace

TEST_CASE("a callout has hole, counterbore and depth in the signs of the drawing standards") {
    auto question = bench::question(bench::newer());
    CHECK(job::inch_callout(question, answer(), 8) == "8X Ø.328 THRU ⌴ Ø.531 ↧ .328");
    CHECK(job::inch_callout(question, answer(), 1) == "Ø.328 THRU ⌴ Ø.531 ↧ .328");
    CHECK(job::metric_callout(question, answer(), 8) == "8× Ø8.3 ⌴ Ø13.5 h 8.3");
    question.blind = bench::tenths(12'490, 12'510);
    CHECK(job::inch_callout(question, answer(), 2) == "2X Ø.328 ↧ 1.250 ⌴ Ø.531 ↧ .328");
    CHECK(job::metric_callout(question, answer(), 2) == "2× Ø8.3 h 31.8 ⌴ Ø13.5 h 8.3");
    question.blind.reset();
    question.screw.hex = true;
    CHECK(job::inch_callout(question, answer(), 2) == "2X Ø.328 THRU ⌴SF Ø.531 ↧ .328");
    auto unknown = answer();
    unknown.depth.reset();
    CHECK(job::inch_callout(question, unknown, 2).empty());
    CHECK(job::metric_callout(question, unknown, 2).empty());
}

TEST_CASE("a tool is called by the whole size within its limits") {
    // DIN 373 M8: 15 z9, 15.060 to 15.103 new, and worn; .4060 measured is called nothing else.
    CHECK(job::called({length::micrometres(14'920), length::micrometres(15'103)},
                      Unit::millimetre) == length::millimetres(15));
    CHECK(job::called(bench::tenths(4058, 4061), Unit::inch) ==
          bench::tenths(4059) + bench::tenths(1) / 2);
}

TEST_CASE("lengths are written to .001 in or 0.1 mm, a stop with its nearest 64th") {
    CHECK(job::shop_text(bench::tenths(3276), Unit::inch) == ".328");
    CHECK(job::shop_text(bench::tenths(3276), Unit::millimetre) == "8.3");
    CHECK(job::shop_text(bench::tenths(41, 88), Unit::inch, Grain::close) == ".004 to .009");
    CHECK(job::shop_text(bench::tenths(41, 88), Unit::millimetre, Grain::close) == "0.1 to 0.22");
    CHECK(job::shop_text(bench::tenths(3281, 3283), Unit::inch) == ".328");
    CHECK(job::nearest_fraction(bench::tenths(3276)) == "21/64");
    CHECK(job::nearest_fraction(bench::tenths(3400)) == "11/32");
    CHECK(job::nearest_fraction(bench::tenths(50)).empty());
}
