// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a size may look like is for src/length to judge: here it is only found out where it ends.
#include "cli/intake/scan.hpp"

#include <algorithm>

#include "trade/drill.hpp"
#include "trade/text.hpp"

namespace cli::intake {

namespace {

constexpr std::string_view k_times = "\xC3\x97"; // U+00D7
constexpr std::string_view k_drill = "drill";
constexpr std::string_view k_plus_minus = "\xC2\xB1";

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

bool is_blank(char c) {
    return c == ' ' || c == '\t';
}

bool starts(std::string_view text, std::string_view with) {
    return text.substr(0, with.size()) == with;
}

// Starts with this word, in either case, and no letter after it.
bool starts_with_whole(std::string_view text, std::string_view word) {
    return trade::folded(text.substr(0, word.size())) == word &&
           (text.size() == word.size() || !is_letter(text[word.size()]));
}

std::size_t blanks_before(std::string_view text) {
    return std::min(text.find_first_not_of(" \t"), text.size());
}

} // namespace

void Scan::skip_blanks() {
    go(blanks_before(rest()));
}

void Scan::skip_separators() {
    go(std::min(rest().find_first_not_of(" \t,;"), rest().size()));
}

bool Scan::at_size() const {
    if (is_digit(here()) || (here() == '.' && is_digit(here(1))))
        return true;
    if (!starts_with_whole(rest(), "go"))
        return false;
    const std::string_view after = rest().substr(2);
    const std::size_t blanks = blanks_before(after);
    return blanks < after.size() && (is_digit(after[blanks]) || after[blanks] == '.');
}

std::string Scan::take_digits() {
    const std::size_t start = at_;
    while (is_digit(here()))
        go(1);
    return std::string(line_.substr(start, at_ - start));
}

// After whole digits: `/64`, `-1/2`, ` 1/2`.
bool Scan::take_fraction(std::string& text) {
    const auto end_of_digits = [this](std::size_t from) {
        while (is_digit(here(from)))
            ++from;
        return from;
    };
    std::size_t slash = 0;
    if (here() == '-' || is_blank(here())) {
        const std::size_t numerator = here() == '-' ? 1 : blanks_before(rest());
        slash = end_of_digits(numerator);
        if (slash == numerator)
            return false;
    }
    const std::size_t end = end_of_digits(slash + 1);
    if (here(slash) != '/' || end == slash + 1)
        return false;
    text += rest().substr(0, end);
    go(end);
    return true;
}

Size Scan::take_figure() {
    Size size;
    size.at = at_;
    size.value = take_digits();
    if (!size.value.empty() && take_fraction(size.value)) {
        size.fraction = true;
        return size;
    }
    if (here() == '.') {
        go(1);
        const std::string decimals = take_digits();
        size.places = decimals.size();
        size.value += '.' + decimals;
    }
    if (here() == ',' && is_digit(here(1)))
        throw LineError(at_, "a comma in a number", "a decimal point: 7.5");
    return size;
}

// `in` before a number is the body that a pilot is in, not a unit.
std::string Scan::take_unit() {
    const std::size_t blanks = blanks_before(rest());
    const std::string_view after = rest().substr(blanks);
    std::size_t length = 0;
    if (starts(after, "\""))
        length = 1;
    for (const std::string_view unit : {"mm", "in", "inch"})
        if (starts_with_whole(after, unit))
            length = unit.size();
    const std::string_view next = after.substr(length);
    const std::size_t gap = blanks_before(next);
    if (length == 0 || (starts_with_whole(after, "in") && gap < next.size() && is_digit(next[gap])))
        return {};
    std::string unit((blanks > 0 ? " " : "") + std::string(after.substr(0, length)));
    go(blanks + length);
    return unit;
}

// `+-.0002`, or one plus and one minus in either order.
std::string Scan::take_limits() {
    const std::size_t start = at_;
    skip_blanks();
    const auto limit = [this](const std::string& sign, std::size_t length) {
        go(length);
        skip_blanks();
        if (!at_size())
            throw LineError(at_, "no limit after " + sign, "for instance .5935 +-.0002");
        std::string figure = take_figure().value;
        return sign + figure + take_unit();
    };
    for (const std::string_view both :
         {std::string_view("+-"), std::string_view("+/-"), k_plus_minus})
        if (starts(rest(), both))
            return limit(std::string(both), both.size());
    if (here() != '+' && here() != '-') {
        at_ = start;
        return {};
    }
    const char first = here();
    std::string limits = limit(std::string(1, first), 1);
    skip_blanks();
    const char second = first == '+' ? '-' : '+';
    if (here() != second)
        throw LineError(at_, "limits are one + and one -, or +- before one",
                        "for instance .5935 +.0002 -.0003");
    return limits + ' ' + limit(std::string(1, second), 1);
}

std::string Scan::take_gauge_end() {
    skip_blanks();
    for (const std::string_view no_go : {"no-go", "nogo", "no go"})
        if (starts_with_whole(rest(), no_go)) {
            go(no_go.size());
            skip_blanks();
            const Size end = take_figure();
            if (!end.value.empty())
                return " no-go " + end.value;
        }
    throw LineError(at_, "go without no-go", "for instance go .1250 no-go .1260");
}

Size Scan::take_size() {
    const std::size_t start = at_;
    const bool gauge = starts_with_whole(rest(), "go");
    if (gauge) {
        go(2);
        skip_blanks();
    }
    Size size = take_figure();
    size.at = start;
    if (gauge) {
        size.value = "go " + size.value + take_unit();
        size.value += take_gauge_end();
        size.unit = take_unit();
        size.limits.clear();
        return size;
    }
    size.unit = take_unit();
    size.limits = take_limits();
    return size;
}

// `#7`, but not `#8-32`, which is a set screw.
bool Scan::at_drill_number() const {
    std::size_t end = 1;
    while (is_digit(here(end)))
        ++end;
    return here() == '#' && end > 1 && (here(end) != '-' || !is_digit(here(end + 1)));
}

bool Scan::at_drill(bool pilot_due) const {
    return starts_with_whole(rest(), k_drill) || (pilot_due && at_drill_number());
}

Size Scan::take_drill() {
    Size size;
    size.at = at_;
    size.drill = true;
    if (starts_with_whole(rest(), k_drill)) {
        go(k_drill.size());
        skip_blanks();
    }
    const std::size_t start = at_;
    const bool letter = is_letter(here()) && !is_letter(here(1)) && !is_digit(here(1));
    if (!letter && !at_drill_number())
        throw LineError(start, "no drill's name after drill", "drill #7, drill F");
    go(1);
    if (!letter)
        static_cast<void>(take_digits());
    size.value = trade::number_or_letter_drill(line_.substr(start, at_ - start));
    return size;
}

bool Scan::take_times() {
    const std::size_t blanks = blanks_before(rest());
    const std::string_view after = rest().substr(blanks);
    const bool letter = !after.empty() && (after.front() == 'x' || after.front() == 'X') &&
                        (after.size() == 1 || !is_letter(after[1]));
    if (!letter && !starts(after, k_times))
        return false;
    go(blanks + (letter ? 1 : k_times.size()));
    skip_blanks();
    if (!at_size() && !at_drill(true))
        throw LineError(at_, "no size after x",
                        "for instance 13/16 x 17/32; a pilot marked with a drill: x #7, x drill F");
    return true;
}

std::string Scan::take_screw() {
    const bool metric = here() == 'M' && is_digit(here(1));
    const bool number = here() == '#' && is_digit(here(1));
    if (!metric && !number && !is_digit(here()))
        return {};
    const std::size_t start = at_;
    if (metric || number)
        go(1);
    while (is_digit(here()) || here() == '.' ||
           ((here() == '/' || here() == '-' || here() == 'x') && is_digit(here(1))))
        go(1);
    return std::string(line_.substr(start, at_ - start));
}

std::string Scan::take_text() {
    const std::size_t length = std::min(rest().find(';'), rest().size());
    std::string text(trade::trimmed(rest().substr(0, length)));
    go(length);
    return text;
}

std::string Scan::take_rest() {
    std::string text(trade::trimmed(rest()));
    go(rest().size());
    return text;
}

// To the next blank or semicolon.
std::string_view Scan::chunk() const {
    return rest().substr(0, std::min(rest().find_first_of(" \t;"), rest().size()));
}

std::string Scan::take_quoted() {
    const std::size_t end = rest().find('"', 1);
    if (end == std::string_view::npos)
        throw LineError(at_, "a quote that does not end", "put \" behind the last word");
    std::string text(trade::trimmed(rest().substr(1, end - 1)));
    go(end + 1);
    return text;
}

std::string Scan::take_phrase() {
    if (here() == '"')
        return take_quoted();
    std::string phrase;
    while (true) {
        const std::size_t before = at_;
        skip_blanks();
        const std::string_view next = chunk();
        const bool number = !next.empty() && std::all_of(next.begin(), next.end(), [](char c) {
            return is_digit(c) || c == ',';
        });
        const bool goes_on =
            phrase.empty() || phrase.back() == ',' ||
            (!is_digit(phrase.back()) && (number || (!starts_with_word(rest()) && !at_size())));
        if (next.empty() || !goes_on) {
            at_ = before;
            break;
        }
        phrase += (phrase.empty() ? "" : " ") + std::string(next);
        go(next.size());
    }
    while (!phrase.empty() && phrase.back() == ',')
        phrase.pop_back();
    return phrase;
}

} // namespace cli::intake
