// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "trade/drill.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <stdexcept>

#include "error/error.hpp"
#include "length/parse.hpp"
#include "length/print.hpp"
#include "trade/text.hpp"

namespace trade {

using length::Length;

namespace {

// From a to b, `part` of `whole` of the way, to the nearest nanometre, half away from zero. Parts
// are under 10^9 and differences under 10^8: the product fits.
Length between(Length a, Length b, Length part, Length whole) {
    const auto product = (b - a).nm() * part.nm();
    const auto half = (product < 0 ? -whole.nm() : whole.nm()) / 2;
    return a + Length::from_nm((product + half) / whole.nm());
}

std::string_view after_mark(std::string_view text) {
    for (const std::string_view mark : {"#", "number", "no.", "no"})
        if (text.substr(0, mark.size()) == mark)
            return trimmed(text.substr(mark.size()));
    return {};
}

std::string number_drill(std::string_view folded_text) {
    const auto digits = after_mark(folded_text);
    int number = 0;
    const auto* end = digits.data() + digits.size();
    const auto read = std::from_chars(digits.data(), end, number);
    if (digits.empty() || read.ec != std::errc() || read.ptr != end)
        return {};
    return number >= 0 ? fmt::format("#{}", number) : "";
}

std::string letter_drill(std::string_view folded_text) {
    constexpr std::string_view k_word = "letter ";
    if (folded_text.substr(0, k_word.size()) == k_word)
        folded_text.remove_prefix(k_word.size());
    if (folded_text.size() != 1 || folded_text[0] < 'a' || folded_text[0] > 'z')
        return {};
    return {static_cast<char>(folded_text[0] - 'a' + 'A')};
}

// `drill F`, `F drill`: the name alone.
std::string_view without_the_word(std::string_view folded_text) {
    constexpr std::string_view k_before = "drill ";
    constexpr std::string_view k_behind = " drill";
    if (folded_text.substr(0, k_before.size()) == k_before)
        return folded_text.substr(k_before.size());
    const auto length = folded_text.size();
    if (length > k_behind.size() && folded_text.substr(length - k_behind.size()) == k_behind)
        return folded_text.substr(0, length - k_behind.size());
    return folded_text;
}

} // namespace

Oversize oversize_at(const std::vector<Oversize>& rows, Length drill) {
    if (rows.empty())
        throw std::invalid_argument("oversize: no rows");
    const auto above = std::find_if(rows.begin(), rows.end(),
                                    [&](const Oversize& row) { return drill <= row.drill; });
    if (above == rows.begin() || above == rows.end()) {
        const auto& row = above == rows.end() ? rows.back() : rows.front();
        return {drill, row.least, row.mean, row.most};
    }
    const auto& lower = *(above - 1);
    const auto part = drill - lower.drill;
    const auto whole = above->drill - lower.drill;
    return {drill, between(lower.least, above->least, part, whole),
            between(lower.mean, above->mean, part, whole),
            between(lower.most, above->most, part, whole)};
}

Length most_over(const std::vector<Oversize>& rows, const std::vector<DrilledHole>& limits,
                 Length drill) {
    const Length average = oversize_at(rows, drill).most;
    if (limits.empty())
        return average;
    const auto found = std::find_if(limits.begin(), limits.end(),
                                    [&](const DrilledHole& row) { return drill <= row.upto; });
    return std::max(average, found == limits.end() ? limits.back().over : found->over);
}

std::string number_or_letter_drill(std::string_view text) {
    const auto folded_text = folded(text);
    const auto name = without_the_word(folded_text);
    auto number = number_drill(name);
    return number.empty() ? letter_drill(name) : number;
}

std::string canonical_drill_name(std::string_view text) {
    if (auto name = number_or_letter_drill(text); !name.empty())
        return name;
    const auto name = folded(text);
    try {
        const auto size = length::parse_length(name, length::Unit::inch);
        if (size.unit == length::Unit::millimetre)
            return length::with_unit(size.value, length::Unit::millimetre);
        const bool plain_number = name.find('.') != std::string::npos;
        return size.fraction || (size.unit_said && !plain_number) ? length::as_fraction(size.value)
                                                                  : "";
    } catch (const error::BadData&) {
        return {};
    }
}

} // namespace trade
