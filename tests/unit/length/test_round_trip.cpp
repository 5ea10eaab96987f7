// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Properties: what is written in full comes back exactly, whatever the locale.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <clocale>
#include <cstdint>
#include <locale>
#include <random>
#include <string>

#include "drill_sizes.hpp"
#include "length/parse.hpp"
#include "length/print.hpp"

using length::Length;
using length::Unit;

namespace {

constexpr int k_random_count = 10'000;

std::int64_t read_nm(const std::string& text, Unit bare) {
    return length::parse_length(text, bare).value.nm();
}

// A count of steps of the last decimal, written without the printer under test.
std::string decimal_text(std::int64_t steps, int decimals) {
    std::int64_t scale = 1;
    for (int i = 0; i < decimals; ++i)
        scale *= 10;
    return fmt::format("{}.{:0{}}", steps / scale, steps % scale, decimals);
}

void check_drill(int ten_thousandths) {
    CAPTURE(ten_thousandths);
    const auto size = length::inches_e5(10 * ten_thousandths);
    CHECK(read_nm(decimal_text(ten_thousandths, 4), Unit::inch) == ten_thousandths * 2540);
    CHECK(read_nm(length::to_text(size, Unit::inch), Unit::inch) == size.nm());
    CHECK(read_nm(length::with_unit(size, Unit::inch), Unit::millimetre) == size.nm());
}

void check_random_values(std::uint32_t seed) {
    std::mt19937 random(seed);
    std::uniform_int_distribution<std::int64_t> inch_steps(1, 39'370'000);
    std::uniform_int_distribution<std::int64_t> mm_steps(1, 10'000'000'000);
    for (int i = 0; i < k_random_count; ++i) {
        const auto inches = inch_steps(random);
        const auto inch_text = decimal_text(inches, 5);
        CAPTURE(inch_text);
        REQUIRE(read_nm(inch_text, Unit::inch) == inches * 254);
        REQUIRE(read_nm(length::to_text(length::inches_e5(inches), Unit::inch), Unit::inch) ==
                inches * 254);

        const auto mm = i % 2 == 0 ? mm_steps(random) : mm_steps(random) / 1'000 + 1;
        const auto mm_text = decimal_text(mm, 6);
        CAPTURE(mm_text);
        REQUIRE(read_nm(mm_text + " mm", Unit::inch) == mm);
        REQUIRE(read_nm(length::to_text(Length::from_nm(mm), Unit::millimetre), Unit::millimetre) ==
                mm);
        if (mm >= 100) // smaller ones print with an exponent
            REQUIRE(read_nm(fmt::format("{}", length::as_mm(Length::from_nm(mm))),
                            Unit::millimetre) == mm);
    }
}

// Points between thousands and a comma before decimals, as on much of the continent.
class CommaPunctuation : public std::numpunct<char> {
  protected:
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

// Sets the locale of C++ to one with commas, and that of C where the machine has such a one.
class CommaLocale {
  public:
    CommaLocale() : before_(std::locale::global(std::locale(std::locale(), new CommaPunctuation))) {
        for (const auto* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "fr_FR.utf8"})
            if (std::setlocale(LC_ALL, name))
                break;
    }
    ~CommaLocale() {
        std::setlocale(LC_ALL, "C");
        std::locale::global(before_);
    }
    CommaLocale(const CommaLocale&) = delete;
    CommaLocale& operator=(const CommaLocale&) = delete;

  private:
    std::locale before_;
};

} // namespace

TEST_CASE("every 64th up to 6 in comes back exactly") {
    for (std::int64_t n = 1; n <= 6 * 64; ++n) {
        const auto size = length::sixty_fourths(n);
        const auto text = length::as_fraction(size);
        CAPTURE(text);
        CHECK(size.nm() == n * 396'875);
        CHECK(read_nm(text, Unit::inch) == size.nm());
        CHECK(read_nm(text + " in", Unit::millimetre) == size.nm());
        CHECK(read_nm(fmt::format("{}/64", n), Unit::inch) == size.nm());
        if (n > 64 && n % 64 != 0)
            CHECK(read_nm(fmt::format("{} {}/64", n / 64, n % 64), Unit::inch) == size.nm());
        CHECK(read_nm(length::to_text(size, Unit::millimetre), Unit::millimetre) == size.nm());
    }
}

TEST_CASE("every number and letter drill comes back exactly") {
    for (const int size : drill_sizes::k_number)
        check_drill(size);
    for (const int size : drill_sizes::k_letter)
        check_drill(size);
}

TEST_CASE("random decimals and millimetres come back exactly") {
    check_random_values(20'260'001);
}

TEST_CASE("a locale with a decimal comma changes nothing") {
    const CommaLocale comma;
    check_random_values(20'260'002);
    CHECK(length::with_unit(length::millimetres(1'234), Unit::millimetre) == "1234 mm");
    CHECK(length::with_unit(length::thousandths(1'500), Unit::inch) == "1.500 in");
    CHECK_THROWS((void)length::parse_length("1,5", Unit::millimetre));
}
