// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// How lengths look to people.
#include <doctest/doctest.h>

#include "length/print.hpp"

using length::exactly;
using length::inches_e5;
using length::Length;
using length::micrometres;
using length::sixty_fourths;
using length::thousandths;
using length::to_text;
using length::Unit;

TEST_CASE("inches have no zero before the point and three decimals at least") {
    CHECK(to_text(inches_e5(43750), Unit::inch) == ".4375");
    CHECK(to_text(thousandths(1500), Unit::inch) == "1.500");
    CHECK(to_text(inches_e5(1), Unit::inch) == ".00001");
    CHECK(to_text(Length{}, Unit::inch) == ".000");
    CHECK(to_text(inches_e5(-500), Unit::inch) == "-.005");
    CHECK(to_text(sixty_fourths(1), Unit::inch) == ".01563");
    CHECK(to_text(-sixty_fourths(1), Unit::inch) == "-.01563");
}

TEST_CASE("millimetres are plain") {
    CHECK(to_text(length::millimetres(10), Unit::millimetre) == "10");
    CHECK(to_text(micrometres(350), Unit::millimetre) == "0.35");
    CHECK(to_text(Length::from_nm(1), Unit::millimetre) == "0.000001");
    CHECK(to_text(Length{}, Unit::millimetre) == "0");
    CHECK(to_text(Length::from_nm(-25'400), Unit::millimetre) == "-0.0254");
}

TEST_CASE("computed values are rounded half away from zero") {
    CHECK(to_text(inches_e5(43750), Unit::inch, 4) == ".4375");
    CHECK(to_text(inches_e5(43750), Unit::inch, 3) == ".438");
    CHECK(to_text(inches_e5(43749), Unit::inch, 3) == ".437");
    CHECK(to_text(inches_e5(-43750), Unit::inch, 3) == "-.438");
    CHECK(to_text(inches_e5(99960), Unit::inch, 3) == "1.000");
    CHECK(to_text(inches_e5(50000), Unit::inch, 0) == "1");
    CHECK(to_text(inches_e5(-4), Unit::inch, 3) == ".000");
    CHECK(to_text(micrometres(1250), Unit::millimetre, 1) == "1.3");
    CHECK(to_text(micrometres(1000), Unit::millimetre, 2) == "1");
}

TEST_CASE("a length says its unit when asked") {
    CHECK(length::with_unit(inches_e5(43750), Unit::inch) == ".4375 in");
    CHECK(length::with_unit(length::millimetres(10), Unit::millimetre) == "10 mm");
}

TEST_CASE("a range shows both ends unless they print alike") {
    CHECK(to_text({thousandths(125), thousandths(126)}, Unit::inch) == ".125 to .126");
    CHECK(to_text(exactly(thousandths(125)), Unit::inch) == ".125");
}

TEST_CASE("fractions are shown in lowest terms, and only where they are whole 64ths") {
    CHECK(length::as_fraction(sixty_fourths(28)) == "7/16");
    CHECK(length::as_fraction(sixty_fourths(96)) == "1-1/2");
    CHECK(length::as_fraction(sixty_fourths(128)) == "2");
    CHECK(length::as_fraction(sixty_fourths(65)) == "1-1/64");
    CHECK(length::as_fraction(thousandths(500)) == "1/2");
    CHECK(length::as_fraction(thousandths(501)).empty());
    CHECK(length::as_fraction(Length{}).empty());
    CHECK(length::as_fraction(sixty_fourths(-1)).empty());
}
