// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// First the cell is read as a date in the ways that spreadsheets write one; then every pair of
// numbers that could have given that date is tried as a size.
#include "cli/record/date_cell.hpp"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <optional>
#include <utility>
#include <vector>

#include "error/error.hpp"
#include "trade/text.hpp"

namespace cli::record {

namespace {

// What was typed: two numbers, in the order they were typed in.
using Pair = std::pair<int, int>;

// The first three letters of months, folded, in the languages of common spreadsheets.
constexpr std::pair<std::string_view, int> k_months[] = {
    {"jan", 1},
    {"ene", 1},
    {"feb", 2},
    {"fev", 2},
    {"f\xC3\xA9v", 2},
    {"mar", 3},
    {"mrt", 3},
    {"m\xC3\xA4r", 3},
    {"apr", 4},
    {"avr", 4},
    {"abr", 4},
    {"may", 5},
    {"mai", 5},
    {"mei", 5},
    {"mag", 5},
    {"jun", 6},
    {"jui", 6},
    {"jul", 7},
    {"aug", 8},
    {"ago", 8},
    {"ao\xC3\xBB", 8},
    {"sep", 9},
    {"set", 9},
    {"oct", 10},
    {"okt", 10},
    {"nov", 11},
    {"dec", 12},
    {"dez", 12},
    {"d\xC3\xA9"
     "c",
     12},
    {"dic", 12},
};

// A whole number of at most four digits.
std::optional<int> number(std::string_view text) {
    int value = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool whole = problem == std::errc() && end == text.data() + text.size();
    return whole && text.size() <= 4 && text.front() != '-' ? std::optional(value) : std::nullopt;
}

std::optional<int> month_name(std::string_view word) {
    for (const auto& [name, month] : k_months)
        if (word.substr(0, name.size()) == name)
            return month;
    return std::nullopt;
}

struct Parts {
    std::vector<std::string> words; // folded
    std::string separators;         // one between each two
};

// Words apart at `-`, `/`, `.` and spaces; a stop after a short month counts with what follows it.
Parts parts_of(std::string_view cell) {
    Parts parts;
    const std::string text = trade::folded(cell);
    std::string word;
    for (const char c : text) {
        if (c != '-' && c != '/' && c != '.' && c != ' ') {
            word += c;
        } else if (!word.empty()) {
            parts.words.push_back(std::exchange(word, {}));
            parts.separators += c;
        }
    }
    if (!word.empty())
        parts.words.push_back(word);
    return parts;
}

bool is_month(int n) {
    return n >= 1 && n <= 12;
}

// The pairs that give a day of a month, and for the first of a month also its year.
std::vector<Pair> pairs_from(int month, std::optional<int> day, std::optional<int> year) {
    std::vector<Pair> pairs;
    const auto both = [&](int n) {
        pairs.emplace_back(month, n);
        pairs.emplace_back(n, month);
    };
    if (day)
        both(*day);
    if (year && (!day || *day == 1))
        both(*year % 100);
    return pairs;
}

// `4-jan`, `jan-64`, `4 jan 2026`.
std::vector<Pair> named_month(const Parts& parts) {
    if (parts.words.size() < 2 || parts.words.size() > 3)
        return {};
    std::optional<int> month;
    std::vector<int> numbers;
    for (const std::string& word : parts.words) {
        if (const auto n = number(word))
            numbers.push_back(*n);
        else if (!month && (month = month_name(word)))
            continue;
        else
            return {};
    }
    if (!month || numbers.empty())
        return {};
    if (numbers.size() == 2)
        return pairs_from(*month, numbers[0], numbers[1]);
    return numbers[0] > 99 ? pairs_from(*month, std::nullopt, numbers[0])
                           : pairs_from(*month, numbers[0], std::nullopt);
}

// `2026-01-04`, `1/4/2026`, `04.01.26`, with or without a time of day after it.
std::vector<Pair> numbered_month(const Parts& parts, std::string_view cell) {
    if (parts.words.size() < 3 || parts.separators[0] != parts.separators[1])
        return {};
    const char separator = parts.separators[0];
    if (separator == ' ')
        return {};
    if (parts.words.size() > 3 && cell.find(':') == std::string_view::npos)
        return {};
    const auto a = number(parts.words[0]);
    const auto b = number(parts.words[1]);
    const auto c = number(parts.words[2].substr(0, parts.words[2].find('t')));
    if (!a || !b || !c)
        return {};
    std::vector<Pair> pairs;
    const auto add = [&](int month, int day, int year) {
        if (!is_month(month) || day < 1 || day > 31)
            return;
        for (const Pair& pair : pairs_from(month, day, year))
            pairs.push_back(pair);
    };
    if (*a > 999) {
        add(*b, *c, *a);
    } else if (*c > 999 || separator != '-') {
        add(*a, *b, *c);
        add(*b, *a, *c);
    }
    return pairs;
}

// A date as the number of days that a spreadsheet keeps it as.
std::vector<Pair> day_count(std::string_view cell) {
    int days = 0;
    const auto [end, problem] = std::from_chars(cell.data(), cell.data() + cell.size(), days);
    const bool whole = problem == std::errc() && end == cell.data() + cell.size();
    if (!whole || cell.size() != 5 || days < 15'000 || days > 73'000)
        return {};
    using namespace std::chrono;
    const year_month_day date(sys_days(year(1899) / December / 30) + std::chrono::days(days));
    return pairs_from(static_cast<int>(static_cast<unsigned>(date.month())),
                      static_cast<int>(static_cast<unsigned>(date.day())),
                      static_cast<int>(date.year()));
}

bool is_fraction(const Pair& p) {
    const bool power = p.second == 2 || p.second == 4 || p.second == 8 || p.second == 16 ||
                       p.second == 32 || p.second == 64;
    return power && p.first >= 1 && p.first < p.second;
}

// Number sizes with their usual threads, and the threads of a one-inch screw (ASME B1.1).
bool is_thread(const Pair& p) {
    constexpr Pair k_threads[] = {
        {0, 80},  {1, 64},  {1, 72},  {2, 56},  {2, 64}, {3, 48}, {3, 56}, {4, 40},
        {4, 48},  {5, 40},  {5, 44},  {6, 32},  {6, 40}, {8, 32}, {8, 36}, {10, 24},
        {10, 32}, {12, 24}, {12, 28}, {12, 32}, {1, 8},  {1, 12}, {1, 14}, {1, 20},
    };
    return std::find(std::begin(k_threads), std::end(k_threads), p) != std::end(k_threads);
}

std::vector<std::string> sizes_of(const std::vector<Pair>& pairs, bool any, SizeKind kind) {
    std::vector<std::string> sizes;
    const auto add = [&](bool threads) {
        for (const Pair& p : pairs) {
            if (!any && !(threads ? is_thread(p) : is_fraction(p)))
                continue;
            const std::string size =
                std::to_string(p.first) + (threads ? '-' : '/') + std::to_string(p.second);
            if (std::find(sizes.begin(), sizes.end(), size) == sizes.end())
                sizes.push_back(size);
        }
    };
    add(kind == SizeKind::screw);
    add(kind != SizeKind::screw);
    return sizes;
}

} // namespace

std::string size_before_date(std::string_view cell, SizeKind kind) {
    const Parts parts = parts_of(cell);
    std::vector<Pair> pairs = named_month(parts);
    if (pairs.empty())
        pairs = numbered_month(parts, cell);
    if (pairs.empty())
        pairs = day_count(trade::trimmed(cell));
    if (pairs.empty())
        return {};
    std::vector<std::string> sizes = sizes_of(pairs, false, kind);
    if (sizes.empty())
        sizes = sizes_of(pairs, true, kind);
    std::string text;
    for (const std::string& size : sizes)
        text += (text.empty() ? "" : " or ") + size;
    return text;
}

void refuse_date(std::string_view cell, SizeKind kind) {
    const std::string size = size_before_date(cell, kind);
    if (size.empty())
        return;
    throw error::BadData("a date, not a size: '" + std::string(cell) + "'",
                         "a spreadsheet changed it: probably " + size +
                             "; format the column as text before typing sizes");
}

} // namespace cli::record
