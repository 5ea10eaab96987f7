// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A washer as it is asked for: a series of the tables, or its measures.
#include <algorithm>
#include <array>

#include "error/error.hpp"
#include "match/question.hpp"
#include "trade/dimension.hpp"
#include "trade/text.hpp"

namespace match {

using trade::Feature;
using trade::How;

namespace {

// Which washers each series of DIN 974-1:1991 allows for, after an extract in a handbook of DIN
// standards; not checked against the standard.
struct WasherRule {
    std::string_view washer;
    std::string_view rule;
};
constexpr std::array<WasherRule, 4> k_rules{{
    {"ISO 7092", "DIN 974-1 series 4"},
    {"DIN 433", "DIN 974-1 series 4"},
    {"ISO 7089", "DIN 974-1 series 5"},
    {"ISO 7090", "DIN 974-1 series 5"},
}};

std::optional<trade::Counterbore> counterbore_for(std::string_view washer,
                                                  const trade::Screw& screw) {
    const auto* known = std::find_if(k_rules.begin(), k_rules.end(),
                                     [&](const WasherRule& row) { return row.washer == washer; });
    if (known == k_rules.end())
        return std::nullopt;
    const auto found =
        std::find_if(screw.counterbores.begin(), screw.counterbores.end(),
                     [&](const trade::Counterbore& row) { return row.rule == known->rule; });
    return found == screw.counterbores.end() ? std::nullopt : std::optional(*found);
}

// A table prints only the largest outside diameter: the spread is that of a head without a
// published minimum, 6 %.
length::Range outside_of(const trade::Washer& row) {
    const auto largest = row.outside_dia_max;
    return {length::Length::from_nm(largest.nm() * 94 / 100), largest};
}

std::optional<Washer> listed(const std::string& word, const std::vector<trade::Washer>& rows,
                             const trade::Screw& screw) {
    for (const auto& row : rows) {
        if (trade::folded(row.series) != word)
            continue;
        Washer washer{row.series, outside_of(row), {}, counterbore_for(row.series, screw)};
        if (row.thickness_max)
            washer.thickness = length::exactly(*row.thickness_max);
        return washer;
    }
    return std::nullopt;
}

std::string series_of(const std::vector<trade::Washer>& rows) {
    std::string names;
    for (const auto& row : rows)
        names += (names.empty() ? "" : ", ") + row.series;
    return names.empty() ? "none" : names;
}

Washer measured(std::string_view text, const trade::Practice& practice, length::Unit unit) {
    const auto cross = text.find('x');
    const auto outside = trade::read_dimension(text.substr(0, cross), How::caliper,
                                               Feature::head_dia, unit, practice);
    Washer washer{std::string(text), outside.range, {}};
    if (cross != std::string_view::npos)
        washer.thickness = trade::read_dimension(text.substr(cross + 1), How::caliper,
                                                 Feature::thickness, unit, practice)
                               .range;
    return washer;
}

} // namespace

Washer parse_washer(std::string_view text, const trade::Screw& screw, const trade::Tables& tables,
                    const trade::Practice& practice, length::Unit unit) {
    const auto rows = screw.size ? tables.washers(screw.size->text) : std::vector<trade::Washer>{};
    if (auto washer = listed(trade::folded(text), rows, screw))
        return *washer;
    try {
        return measured(text, practice, unit);
    } catch (const error::BadData& bad) {
        throw error::BadData("washer: neither a series of this size nor a diameter: '" +
                                 std::string(text) + "'",
                             "series: " + series_of(rows) + "; or 5/8, or 5/8 x 1/16");
    }
}

} // namespace match
