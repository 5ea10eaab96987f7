// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "drawing/lettering.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "length/grid.hpp"
#include "length/print.hpp"

namespace drawing {

using length::Length;
using length::Range;
using length::Unit;

namespace {

constexpr double k_above = 0.78; // of the size: tall letters over the baseline
constexpr double k_below = 0.24; // tails under it
constexpr double k_strong = 1.13;

// Characters by width, in thousandths of the size: no plain sans-serif in common use is wider.
struct WidthClass {
    std::string_view characters;
    double width;
};
constexpr WidthClass k_widths[]{
    {"ijl'", 285},      {"I .,", 325},      {":;|/\\J!fr()[]-t", 420},
    {"sz\"*?_c", 560},  {"aekvxyFLT", 622}, {"bdghnopqu0123456789$PSY", 640},
    {"ABCEKRVXZ", 705}, {"DGHNOQU&", 790},  {"#+=<>~^w", 840},
};
constexpr double k_widest = 1000;
constexpr double k_escaped = 2500; // a control character, shown as an escape

double width_of(char character) {
    const auto byte = static_cast<unsigned char>(character);
    if (byte >= 0x80 && byte < 0xC0) // goes on with a character that is counted already
        return 0;
    if (byte < 0x20 || byte == 0x7F)
        return k_escaped;
    for (const auto& group : k_widths)
        if (group.characters.find(character) != std::string_view::npos)
            return group.width;
    return k_widest;
}

bool begins_character(char character) {
    const auto byte = static_cast<unsigned char>(character);
    return byte < 0x80 || byte >= 0xC0;
}

// How many bytes of `word` fit, at least one character.
std::size_t fitting(std::string_view word, double size, double width) {
    std::size_t bytes = 1;
    for (std::size_t i = 1; i <= word.size(); ++i) {
        if (i < word.size() && !begins_character(word[i]))
            continue;
        if (i > 1 && drawing::width_of(word.substr(0, i), size) > width)
            break;
        bytes = i;
        if (i == word.size())
            break;
    }
    while (bytes < word.size() && !begins_character(word[bytes]))
        ++bytes;
    return bytes;
}

// Closer than any limits of a length or a chamfer.
bool close_together(const Range& limits, Unit unit) {
    return limits.hi - limits.lo < in_unit(unit, length::inches_e5(450), length::micrometres(40));
}

std::string padded(Length value, Unit unit, int decimals) {
    auto text = length::to_text(value, unit, decimals);
    auto point = text.find('.');
    if (point == std::string::npos) {
        point = text.size();
        text += '.';
    }
    while (text.size() - point - 1 < static_cast<std::size_t>(decimals))
        text += '0';
    return text;
}

Unit other(Unit unit) {
    return unit == Unit::inch ? Unit::millimetre : Unit::inch;
}

Length step_for(const Range& limits, Unit unit) {
    if (close_together(limits, unit))
        return fine_step(unit);
    return in_unit(unit, length::thousandths(1), length::micrometres(10));
}

} // namespace

double width_of(std::string_view words, double size) {
    double sum = 0;
    for (const char character : words)
        sum += width_of(character);
    return sum * size / 1000;
}

double width_of(const Stack& stack, double size) {
    double width = 0;
    for (const auto& line : stack)
        width = std::max(width, width_of(line, size));
    return width;
}

double height_of(const Stack& stack, double size) {
    if (stack.empty())
        return 0;
    return (static_cast<double>(stack.size() - 1) * k_line_pitch + k_above + k_below) * size;
}

Box box_of(const Text& text) {
    const double width = width_of(text.words, text.size) * (text.strong ? k_strong : 1);
    double left = text.at.x;
    if (text.anchor == Anchor::middle)
        left -= width / 2;
    else if (text.anchor == Anchor::end)
        left -= width;
    return {left, text.at.y - k_above * text.size, left + width, text.at.y + k_below * text.size};
}

Stack wrap(std::string_view words, double size, double width) {
    Stack lines;
    std::string line;
    while (!words.empty()) {
        const auto space = words.find(' ');
        auto word = words.substr(0, space);
        words.remove_prefix(space == std::string_view::npos ? words.size() : space + 1);
        while (!word.empty()) {
            const auto longer = line.empty() ? std::string(word) : line + " " + std::string(word);
            if (width_of(longer, size) <= width) {
                line = longer;
                break;
            }
            if (!line.empty()) {
                lines.push_back(std::exchange(line, {}));
                continue;
            }
            const auto bytes = fitting(word, size, width);
            lines.emplace_back(word.substr(0, bytes));
            word.remove_prefix(bytes);
        }
    }
    if (!line.empty())
        lines.push_back(line);
    return lines;
}

std::string limits_text(const Range& limits, Unit unit) {
    const int decimals = (unit == Unit::inch ? 3 : 2) + (close_together(limits, unit) ? 1 : 0);
    const auto inside = inward(limits, step_for(limits, unit));
    const auto lo = padded(inside.lo, unit, decimals);
    const auto hi = padded(inside.hi, unit, decimals);
    return lo == hi ? lo : lo + "-" + hi;
}

Stack limits_stack(const Range& limits, const Lettering& lettering, std::string_view before,
                   std::string_view after) {
    Stack stack{fmt::format("{}{}{}", before, limits_text(limits, lettering.unit), after)};
    if (lettering.both_units)
        stack.push_back("[" + limits_text(limits, other(lettering.unit)) + "]");
    return stack;
}

std::string size_text(Length size, Unit unit) {
    const auto fraction = length::as_fraction(size);
    const bool inch = unit == Unit::inch;
    if (!fraction.empty())
        return fraction + " in (" +
               (inch ? length::to_text(size, unit, 4) : length::with_unit(size, unit)) + ")";
    if (inch && size.nm() % length::micrometres(500).nm() == 0)
        return length::with_unit(size, Unit::millimetre) + " (" + length::to_text(size, unit, 4) +
               ")";
    return length::to_text(size, unit, 3) + (inch ? " in" : " mm");
}

} // namespace drawing
