// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/chart_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "present/chart_blocks.hpp"
#include "present/text.hpp"

namespace present {

using match::AnswerKind;
using match::ChartEntry;

namespace {

constexpr std::size_t k_gap = 2;
constexpr std::size_t k_narrowest = 10;

std::string cell_text(const ChartEntry* entry) {
    return entry ? chart_cell(*entry) : std::string();
}

std::size_t label_width(const ChartBlock& block) {
    std::size_t width = 5;
    for (const auto& row : block.rows)
        width = std::max(width, display_width(safe(row.label)));
    return width;
}

std::size_t column_width(const ChartBlock& block, std::size_t column) {
    std::size_t width = k_narrowest;
    for (const auto& row : block.rows)
        width = std::max(width, display_width(cell_text(row.cells[column])));
    std::string word; // headings break at spaces
    for (const char c : block.columns[column] + ' ') {
        if (c == ' ') {
            width = std::max(width, word.size());
            word.clear();
        } else {
            word += c;
        }
    }
    return width;
}

std::string trimmed_line(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line + '\n';
}

std::string styled(const std::string& text, const ChartEntry* entry, const Style& style) {
    if (!entry || !entry->best)
        return text;
    return entry->best->kind == AnswerKind::ready ? style.good(text) : style.doubtful(text);
}

// Columns [from, to) of a block: headings over each other, then the rows.
struct Strip {
    const ChartBlock& block;
    std::size_t label;
    std::vector<std::size_t> widths; // of every column
    std::size_t from = 0;
    std::size_t to = 0;

    [[nodiscard]] std::string headings(const Style& style) const {
        std::vector<std::vector<std::string>> lines;
        std::size_t height = 0;
        for (auto at = from; at < to; ++at) {
            lines.push_back(wrapped(block.columns[at], widths[at]));
            height = std::max(height, lines.back().size());
        }
        std::string text;
        for (std::size_t line = 0; line < height; ++line) {
            std::string row = padded(line == 0 ? "size" : "", label, false);
            for (auto at = from; at < to; ++at) {
                const auto& words = lines[at - from];
                row += std::string(k_gap, ' ') +
                       padded(line < words.size() ? words[line] : "", widths[at], false);
            }
            const auto end = row.find_last_not_of(' ') + 1;
            text += style.strong(row.substr(0, end)) + '\n';
        }
        return text;
    }

    [[nodiscard]] std::string rows(const Style& style) const {
        std::string text;
        for (const auto& row : block.rows) {
            const bool any = std::any_of(row.cells.begin() + static_cast<std::ptrdiff_t>(from),
                                         row.cells.begin() + static_cast<std::ptrdiff_t>(to),
                                         [](const ChartEntry* entry) { return entry != nullptr; });
            if (!any)
                continue;
            std::string line = padded(safe(row.label), label, false);
            for (auto at = from; at < to; ++at) {
                const auto cell = cell_text(row.cells[at]);
                line += std::string(k_gap, ' ') + styled(cell, row.cells[at], style) +
                        std::string(widths[at] - display_width(cell), ' ');
            }
            text += trimmed_line(line);
        }
        return text;
    }
};

std::string block_text(const ChartBlock& block, const Style& style, std::size_t width) {
    Strip strip{block, label_width(block), {}};
    for (std::size_t at = 0; at < block.columns.size(); ++at)
        strip.widths.push_back(column_width(block, at));
    std::string text = style.strong(block.title) + '\n';
    while (strip.to < block.columns.size()) {
        strip.from = strip.to;
        auto used = strip.label;
        do
            used += k_gap + strip.widths[strip.to++];
        while (strip.to < block.columns.size() && used + k_gap + strip.widths[strip.to] <= width);
        text += strip.headings(style) + strip.rows(style) + '\n';
    }
    return text;
}

Json entry_json(const ChartEntry& entry) {
    const auto& best = entry.best;
    const auto or_null = [](const auto& value) { return value ? Json(*value) : Json(nullptr); };
    return {{"screw", entry.screw},
            {"hole", text_json(entry.hole)},
            {"form", text_json(entry.form)},
            {"series", text_json(entry.series)},
            {"answer", best ? Json(match::to_text(best->kind)) : Json(nullptr)},
            {"body", best ? Json(best->body) : Json(nullptr)},
            {"pilot", best ? or_null(best->pilot) : Json(nullptr)},
            {"drill", best && best->drill ? Json(best->drill->name) : Json(nullptr)},
            {"place", best ? text_json(best->place) : Json(nullptr)}};
}

} // namespace

std::string chart_counts(const std::vector<ChartEntry>& entries) {
    std::array<std::size_t, match::k_answer_kinds> counts{};
    std::size_t without = 0;
    for (const auto& entry : entries)
        ++(entry.best ? counts[static_cast<std::size_t>(entry.best->kind)] : without);
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i] > 0)
            parts.push_back(
                fmt::format("{} {}", counts[i], chart_word(static_cast<AnswerKind>(i))));
    if (without > 0)
        parts.push_back(fmt::format("{} without a tool", without));
    return fmt::format("{}", fmt::join(parts, ", "));
}

std::string chart_text(const std::vector<ChartEntry>& entries, const Style& style,
                       std::size_t width) {
    std::string text;
    for (const auto& block : chart_blocks(entries))
        text += block_text(block, style, width);
    return text + "The number is the body's; nothing stands where no tool comes into question.\n" +
           chart_counts(entries) + ".\n";
}

Json chart_json(const std::vector<ChartEntry>& entries) {
    Json screws = Json::array();
    for (const auto& entry : entries)
        screws.push_back(entry_json(entry));
    return {{"format", 1}, {"screws", screws}};
}

std::vector<std::vector<std::string>> chart_rows(const std::vector<ChartEntry>& entries) {
    std::vector<std::vector<std::string>> rows{
        {"screw", "hole", "form", "series", "answer", "body", "pilot", "drill", "place"}};
    for (const auto& entry : entries) {
        const auto& best = entry.best;
        rows.push_back({entry.screw, entry.hole, entry.form, entry.series,
                        best ? std::string(match::to_text(best->kind)) : "",
                        best ? std::to_string(best->body) : "",
                        best && best->pilot ? std::to_string(*best->pilot) : "",
                        best && best->drill ? best->drill->name : "", best ? best->place : ""});
    }
    return rows;
}

} // namespace present
