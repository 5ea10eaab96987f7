// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Values and their limits, from the figures in a text.
#include "length/parse.hpp"

#include <optional>

#include "length/figure.hpp"

namespace length {

namespace {

Written written(const Figure& figure, Unit unit, std::string_view text) {
    return {value_of(figure, unit, text), unit, figure.fraction(), figure.unit_said};
}

// The distances that limits stand from their value, as written.
struct Limits {
    Figure over;
    Figure under;
};

bool take_plus_or_minus(Scanner& scanner) {
    for (const auto* token : {"+-", "+/-", "\xC2\xB1"})
        if (scanner.take(token))
            return true;
    return false;
}

std::optional<Limits> take_limits(Scanner& scanner) {
    if (take_plus_or_minus(scanner)) {
        const auto both = scanner.take_figure();
        return Limits{both, both};
    }
    const bool over_first = scanner.take("+");
    if (!over_first && !scanner.take("-"))
        return std::nullopt;
    const auto first = scanner.take_figure();
    if (!scanner.take(over_first ? "-" : "+"))
        scanner.refuse("limits are one + and one -, or +- before one");
    const auto second = scanner.take_figure();
    return over_first ? Limits{first, second} : Limits{second, first};
}

// The first unit that is written, of the value and then of its limits.
Unit unit_among(std::optional<Unit> first, std::optional<Unit> second, std::optional<Unit> third,
                Unit bare) {
    if (first)
        return *first;
    if (second)
        return *second;
    return third.value_or(bare);
}

Reading with_limits(const Figure& value, const Limits& limits, Unit bare, std::string_view text) {
    const auto unit = unit_among(value.unit, limits.over.unit, limits.under.unit, bare);
    const auto nominal = written(value, unit, text);
    const auto over = value_of(limits.over, limits.over.unit.value_or(unit), text);
    const auto under = value_of(limits.under, limits.under.unit.value_or(unit), text);
    if (nominal.value <= Length{})
        refuse_length("zero", text);
    if (under >= nominal.value)
        refuse_length("the lower limit is not over zero", text);
    return {nominal, Range{nominal.value - under, nominal.value + over}};
}

bool take_no_go(Scanner& scanner) {
    if (scanner.take("no-go") || scanner.take("nogo"))
        return true;
    return scanner.take("no") && scanner.take("go");
}

// After `go`: both ends of the gauge; either may be the larger (a plug or a ring).
Reading go_and_no_go(Scanner& scanner, Unit bare, std::string_view text) {
    const auto go = scanner.take_figure();
    if (!take_no_go(scanner))
        scanner.refuse("go without no-go");
    const auto no_go = scanner.take_figure();
    scanner.expect_end();
    const auto unit = unit_among(go.unit, no_go.unit, std::nullopt, bare);
    const auto a = value_of(go, go.unit.value_or(unit), text);
    const auto b = value_of(no_go, no_go.unit.value_or(unit), text);
    if (a <= Length{} || b <= Length{})
        refuse_length("zero", text);
    return {Written{(a + b) / 2, unit, false, go.unit_said || no_go.unit_said}, spanning(a, b)};
}

} // namespace

Written parse_length_or_zero(std::string_view text, Unit bare) {
    Scanner scanner(text);
    const auto figure = scanner.take_figure();
    if (take_limits(scanner))
        scanner.refuse("limits where one plain length is expected");
    scanner.expect_end();
    return written(figure, figure.unit.value_or(bare), text);
}

Written parse_length(std::string_view text, Unit bare) {
    const auto found = parse_length_or_zero(text, bare);
    if (found.value <= Length{})
        refuse_length("zero", text);
    return found;
}

Reading parse_reading_or_zero(std::string_view text, Unit bare) {
    Scanner scanner(text);
    if (scanner.take("go"))
        return go_and_no_go(scanner, bare, text);
    const auto value = scanner.take_figure();
    const auto limits = take_limits(scanner);
    scanner.expect_end();
    if (limits)
        return with_limits(value, *limits, bare, text);
    return {written(value, value.unit.value_or(bare), text), std::nullopt};
}

Reading parse_reading(std::string_view text, Unit bare) {
    const auto reading = parse_reading_or_zero(text, bare);
    if (reading.nominal.value <= Length{})
        refuse_length("zero", text);
    return reading;
}

} // namespace length
