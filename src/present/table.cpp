// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Widths first, then lines.
#include "present/table.hpp"

#include <algorithm>
#include <numeric>
#include <string_view>

#include "present/text.hpp"

namespace present {

namespace {

constexpr std::size_t k_gap = 2;
constexpr std::size_t k_least = 8; // a column of text is not made narrower than this

using Rows = std::vector<std::vector<std::string>>;

std::vector<std::size_t> used_columns(std::size_t count, const Rows& rows) {
    std::vector<std::size_t> used;
    for (std::size_t c = 0; c < count; ++c)
        if (std::any_of(rows.begin(), rows.end(), [c](const auto& row) { return !row[c].empty(); }))
            used.push_back(c);
    return used;
}

std::size_t longest_word(std::string_view text) {
    std::size_t longest = 0;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        longest = std::max(longest, display_width(text.substr(0, end)));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return longest;
}

// Takes columns in, the widest first and none below its least width, until the line fits or nothing
// can give.
void narrow(std::vector<std::size_t>& widths, const std::vector<std::size_t>& least,
            std::size_t width) {
    const std::size_t gaps = widths.empty() ? 0 : k_gap * (widths.size() - 1);
    while (std::accumulate(widths.begin(), widths.end(), gaps) > width) {
        std::size_t widest = widths.size();
        for (std::size_t i = 0; i < widths.size(); ++i) {
            if (widths[i] <= least[i])
                continue;
            if (widest == widths.size() || widths[i] > widths[widest])
                widest = i;
        }
        if (widest == widths.size())
            return;
        --widths[widest];
    }
}

// One row of cells, as many lines as its longest cell needs.
std::string lines_of(const std::vector<std::string>& cells, const std::vector<std::size_t>& widths,
                     const std::vector<bool>& right, const Style& style) {
    std::vector<std::vector<std::string>> broken;
    std::size_t height = 1;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        broken.push_back(wrapped(cells[i], right[i] ? cells[i].size() : widths[i]));
        height = std::max(height, broken.back().size());
    }
    std::string text;
    for (std::size_t line = 0; line < height; ++line) {
        std::string whole;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const std::string_view piece =
                line < broken[i].size() ? std::string_view(broken[i][line]) : std::string_view();
            whole += padded(piece, widths[i], right[i]) + std::string(k_gap, ' ');
        }
        whole.erase(whole.find_last_not_of(' ') + 1);
        text += style.strong(whole) + '\n';
    }
    return text;
}

} // namespace

void Table::add(const std::vector<std::string>& cells) {
    std::vector<std::string>& row = rows_.emplace_back();
    for (const std::string& cell : cells)
        row.push_back(safe(cell));
    row.resize(columns_.size());
}

std::string Table::text(std::size_t width, const Style& style) const {
    const std::vector<std::size_t> used = used_columns(columns_.size(), rows_);
    std::vector<std::string> titles;
    std::vector<std::size_t> widths;
    std::vector<std::size_t> whole_words; // widths that break no word
    std::vector<std::size_t> least;
    std::vector<bool> right;
    for (const std::size_t c : used) {
        titles.push_back(columns_[c].title);
        right.push_back(columns_[c].right);
        std::size_t widest = display_width(columns_[c].title);
        std::size_t word = longest_word(columns_[c].title);
        for (const auto& row : rows_) {
            widest = std::max(widest, display_width(row[c]));
            word = std::max(word, longest_word(row[c]));
        }
        widths.push_back(widest);
        whole_words.push_back(columns_[c].right ? widest : word);
        least.push_back(columns_[c].right ? widest : std::min(widest, k_least));
    }
    narrow(widths, whole_words, width);
    narrow(widths, least, width);
    std::string text = lines_of(titles, widths, right, style);
    for (const auto& row : rows_) {
        std::vector<std::string> cells;
        for (const std::size_t c : used)
            cells.push_back(row[c]);
        text += lines_of(cells, widths, right, Style{});
    }
    return text;
}

} // namespace present
