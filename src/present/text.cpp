// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Character classes are the few that matter to a terminal, not the whole of Unicode.
#include "present/text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "present/utf8.hpp"

namespace present {

namespace {

struct Span {
    char32_t first;
    char32_t last;
};

// C0 and C1 controls, and what reorders, hides or breaks a line (Unicode bidi controls, zero-width
// characters, line and paragraph separators, byte order mark, tags).
constexpr Span k_unsafe[] = {
    {0x00, 0x1F},     {0x7F, 0x9F},     {0x061C, 0x061C}, {0x200B, 0x200F}, {0x2028, 0x202E},
    {0x2060, 0x2064}, {0x2066, 0x206F}, {0xFEFF, 0xFEFF}, {0xFFF9, 0xFFFB}, {0xE0000, 0xE007F},
};

// Combining marks in common use.
constexpr Span k_narrow[] = {
    {0x0300, 0x036F}, {0x0483, 0x0489}, {0x0591, 0x05BD}, {0x0610, 0x061A}, {0x064B, 0x065F},
    {0x1AB0, 0x1AFF}, {0x1DC0, 0x1DFF}, {0x20D0, 0x20FF}, {0xFE00, 0xFE0F}, {0xFE20, 0xFE2F},
};

// East Asian wide and full-width, and pictographs.
constexpr Span k_wide[] = {
    {0x1100, 0x115F},   {0x2E80, 0x303E},   {0x3041, 0xA4CF},   {0xAC00, 0xD7A3},
    {0xF900, 0xFAFF},   {0xFE30, 0xFE6F},   {0xFF00, 0xFF60},   {0xFFE0, 0xFFE6},
    {0x1F300, 0x1F64F}, {0x1F900, 0x1F9FF}, {0x20000, 0x3FFFD},
};

bool in(char32_t code, const Span* first, const Span* last) {
    return std::any_of(first, last,
                       [code](const Span& s) { return code >= s.first && code <= s.last; });
}

std::size_t width_of(const Character& c) {
    if (in(c.code, std::begin(k_narrow), std::end(k_narrow)))
        return 0;
    return in(c.code, std::begin(k_wide), std::end(k_wide)) ? 2 : 1;
}

std::string escape(char32_t code) {
    switch (code) {
    case '\n':
        return "\\n";
    case '\r':
        return "\\r";
    case '\t':
        return "\\t";
    default:
        break;
    }
    const auto value = static_cast<std::uint32_t>(code);
    return value < 0x100 ? fmt::format("\\x{:02x}", value) : fmt::format("\\u{:04x}", value);
}

std::string safe_with(std::string_view text, bool lines) {
    std::string result;
    while (!text.empty()) {
        const Character c = first_character(text);
        const bool stays = c.bytes > 0 && ((lines && c.code == '\n') ||
                                           !in(c.code, std::begin(k_unsafe), std::end(k_unsafe)));
        if (stays)
            result += text.substr(0, c.bytes);
        else
            result += escape(c.code);
        text.remove_prefix(std::max<std::size_t>(c.bytes, 1));
    }
    return result;
}

// The bytes at the start of `text` that take at most `columns`.
std::size_t bytes_within(std::string_view text, std::size_t columns) {
    std::size_t used = 0;
    std::size_t at = 0;
    while (at < text.size()) {
        const Character c = first_character(text.substr(at));
        used += width_of(c);
        if (used > columns)
            break;
        at += std::max<std::size_t>(c.bytes, 1);
    }
    return at;
}

void wrap_line(std::string_view line, std::size_t columns, std::vector<std::string>& lines) {
    if (line.empty())
        lines.emplace_back();
    while (!line.empty()) {
        std::size_t take = bytes_within(line, columns);
        if (take < line.size() && line[take] != ' ') {
            const std::size_t space = line.substr(0, take).rfind(' ');
            if (space != std::string_view::npos && space > 0)
                take = space;
        }
        if (take == 0)
            take = std::max<std::size_t>(first_character(line).bytes, 1);
        std::string_view piece = line.substr(0, take);
        piece = piece.substr(0, piece.find_last_not_of(' ') + 1);
        lines.emplace_back(piece);
        line.remove_prefix(take);
        line.remove_prefix(std::min(line.find_first_not_of(' '), line.size()));
    }
}

} // namespace

std::string safe(std::string_view text) {
    return safe_with(text, false);
}

std::string safe_lines(std::string_view text) {
    return safe_with(text, true);
}

std::size_t display_width(std::string_view text) {
    std::size_t width = 0;
    while (!text.empty()) {
        const Character c = first_character(text);
        width += width_of(c);
        text.remove_prefix(std::max<std::size_t>(c.bytes, 1));
    }
    return width;
}

std::string cut(std::string_view text, std::size_t columns) {
    if (display_width(text) <= columns)
        return std::string(text);
    if (columns == 0)
        return {};
    return std::string(text.substr(0, bytes_within(text, columns - 1))) + '~';
}

std::vector<std::string> wrapped(std::string_view text, std::size_t columns) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        wrap_line(text.substr(0, end), std::max<std::size_t>(columns, 1), lines);
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

std::string padded(std::string_view text, std::size_t columns, bool right) {
    const std::size_t width = display_width(text);
    const std::string space(columns > width ? columns - width : 0, ' ');
    return right ? space + std::string(text) : std::string(text) + space;
}

} // namespace present
