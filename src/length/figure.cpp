// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Reading one figure by hand: no locale, no floating point, and a plain word about what is wrong.
#include "length/figure.hpp"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cstdint>

#include "error/error.hpp"

namespace length {

namespace {

constexpr std::size_t k_inch_decimals = 5;
constexpr std::size_t k_mm_decimals = 6;
constexpr std::size_t k_most_digits = 9; // of a whole number: far over 10 m, far under overflow
constexpr std::size_t k_most_quoted = 80;
constexpr Length k_longest = millimetres(10'000);

constexpr std::string_view k_hint =
    "write 3/8, 1-1/2, .375, .375 in or 10 mm (fractions to 64ths, inches to 5 decimals, "
    "millimetres to 6), with limits if known: .5935 +-.0002, .5935 +.0002 -.0003, "
    "go .1250 no-go .1260";

bool is_blank(char c) {
    return c == ' ' || c == '\t';
}
bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}
bool is_letter(char c) {
    return lower(c) >= 'a' && lower(c) <= 'z';
}

bool starts_with_word(std::string_view text, std::string_view word) {
    if (text.size() < word.size())
        return false;
    for (std::size_t i = 0; i < word.size(); ++i)
        if (lower(text[i]) != word[i])
            return false;
    return true;
}

std::int64_t whole_number(std::string_view digits, std::string_view text) {
    while (digits.size() > 1 && digits.front() == '0')
        digits.remove_prefix(1);
    if (digits.size() > k_most_digits)
        refuse_length("over 10 m", text);
    std::int64_t value = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return value;
}

// A fraction of an inch, in sixty-fourths.
std::int64_t in_64ths(const Figure& figure, std::string_view text) {
    const auto over = whole_number(figure.denominator, text);
    const auto part = whole_number(figure.numerator, text);
    const auto whole = figure.whole.empty() ? 0 : whole_number(figure.whole, text);
    if (over == 0)
        refuse_length("a fraction over zero", text);
    if (over < 2 || over > 64 || 64 % over != 0)
        refuse_length("fractions go by halves, 4ths, 8ths, 16ths, 32nds and 64ths", text);
    if (!figure.whole.empty() && part >= over)
        refuse_length("a whole number with a fraction of one or more", text);
    return whole * 64 + part * (64 / over);
}

Length decimal_value(const Figure& figure, Unit unit, std::string_view text) {
    const bool inch = unit == Unit::inch;
    auto decimals = figure.decimals;
    while (!decimals.empty() && decimals.back() == '0')
        decimals.remove_suffix(1);
    if (decimals.size() > (inch ? k_inch_decimals : k_mm_decimals))
        refuse_length(inch ? "finer than .00001 in" : "finer than .000001 mm", text);
    std::int64_t nm = (figure.whole.empty() ? 0 : whole_number(figure.whole, text)) *
                      (inch ? k_nm_per_inch : k_nm_per_mm);
    std::int64_t place = inch ? k_nm_per_inch : k_nm_per_mm;
    for (const char digit : decimals) {
        place /= 10; // exact: both units hold as many tens as decimals are let through
        nm += place * (digit - '0');
    }
    return Length::from_nm(nm);
}

} // namespace

void refuse_length(std::string_view why, std::string_view text) {
    auto shown = text.substr(0, k_most_quoted);
    while (shown.size() < text.size() && !shown.empty() &&
           (static_cast<unsigned char>(text[shown.size()]) & 0xC0U) == 0x80U)
        shown.remove_suffix(1); // not within a character
    throw error::BadData(
        fmt::format("length: {}: '{}{}'", why, shown, shown.size() < text.size() ? "..." : ""),
        std::string(k_hint));
}

Length value_of(const Figure& figure, Unit unit, std::string_view text) {
    const auto value = figure.fraction() ? sixty_fourths(in_64ths(figure, text))
                                         : decimal_value(figure, unit, text);
    if (value > k_longest)
        refuse_length("over 10 m", text);
    return value;
}

void Scanner::skip_blanks() {
    while (at_ < text_.size() && is_blank(text_[at_]))
        ++at_;
}

bool Scanner::at_end() {
    skip_blanks();
    return at_ == text_.size();
}

bool Scanner::take(std::string_view token) {
    skip_blanks();
    if (!starts_with_word(rest(), token))
        return false;
    const bool word = is_letter(token.back());
    if (word && at_ + token.size() < text_.size() && is_letter(text_[at_ + token.size()]))
        return false;
    at_ += token.size();
    return true;
}

void Scanner::refuse(std::string_view why) const {
    refuse_length(why, text_);
}

std::string_view Scanner::take_digits() {
    const auto from = at_;
    while (at_ < text_.size() && is_digit(text_[at_]))
        ++at_;
    return text_.substr(from, at_ - from);
}

// After a whole number: `/8` makes it the numerator; `-1/2` or ` 1/2` joins it.
bool Scanner::take_fraction_after(Figure& figure) {
    const auto start = at_;
    if (rest().substr(0, 1) == "/") {
        figure.numerator = figure.whole;
        figure.whole = {};
    } else {
        if (rest().substr(0, 1) == "-")
            ++at_;
        else
            skip_blanks();
        if (at_ == start || (figure.numerator = take_digits()).empty() ||
            rest().substr(0, 1) != "/") {
            figure.numerator = {};
            at_ = start;
            return false;
        }
    }
    ++at_;
    figure.denominator = take_digits();
    if (figure.denominator.empty())
        refuse("a fraction without its lower number");
    figure.unit = Unit::inch;
    return true;
}

void Scanner::refuse_what_is_no_figure() const {
    const auto left = rest();
    if (left.empty())
        refuse(text_.find_first_not_of(" \t") == text_.npos ? "nothing is written"
                                                            : "a number is missing at the end");
    if (left.front() == '-')
        refuse("less than zero");
    if (left.front() == '+')
        refuse("a sign before the number");
    if (left.front() == ',')
        refuse("a decimal comma; write a point");
    if (left.front() == '.')
        refuse("a point without digits");
    if (starts_with_word(left, "nan") || starts_with_word(left, "inf"))
        refuse("not a number");
    refuse("no number where one is expected");
}

void Scanner::refuse_what_follows_digits() const {
    const auto left = rest();
    if (left.empty())
        return;
    const char next = lower(left.front());
    if (next == ',')
        refuse("a comma; write a decimal point, and nothing between thousands");
    if (next == '.')
        refuse("a point out of place");
    if (next == 'x' && left.size() > 1 && text_[at_ - 1] == '0')
        refuse("a hexadecimal number");
    if (next == 'e' && left.size() > 1 && (is_digit(left[1]) || left[1] == '+' || left[1] == '-'))
        refuse("an exponent");
}

void Scanner::take_unit(Figure& figure) {
    static constexpr std::array<std::string_view, 5> k_inches{"inches", "inch", "in.", "in", "\""};
    std::optional<Unit> unit;
    if (take("mm"))
        unit = Unit::millimetre;
    for (const auto word : k_inches)
        if (!unit && take(word))
            unit = Unit::inch;
    if (!unit)
        return;
    if (figure.fraction() && *unit == Unit::millimetre)
        refuse("a fraction of a millimetre");
    figure.unit = unit;
    figure.unit_said = true;
}

Figure Scanner::take_figure() {
    skip_blanks();
    Figure figure;
    figure.whole = take_digits();
    const bool fraction = !figure.whole.empty() && take_fraction_after(figure);
    if (!fraction && rest().substr(0, 1) == ".") {
        ++at_;
        figure.decimals = take_digits();
        if (figure.decimals.empty())
            refuse(figure.whole.empty() ? "a point without digits" : "no digit after the point");
    }
    if (figure.whole.empty() && figure.decimals.empty() && !fraction)
        refuse_what_is_no_figure();
    refuse_what_follows_digits();
    take_unit(figure);
    return figure;
}

void Scanner::expect_end() {
    if (at_end())
        return;
    const auto left = rest();
    if (is_digit(left.front()) || left.front() == '.')
        refuse("a second number");
    if (left.front() == ',')
        refuse("a comma; write a decimal point, and nothing between thousands");
    if (left.front() == '+' || left.front() == '-')
        refuse("one limit alone; write both, or +- before one");
    refuse(fmt::format("not understood after the number: {}",
                       is_letter(left.front()) ? "only in, inch, \" and mm are units"
                                               : "end it there"));
}

} // namespace length
