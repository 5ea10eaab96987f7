// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <algorithm>

#include "error/error.hpp"
#include "match/question.hpp"
#include "trade/text.hpp"

namespace match {

using trade::DrillKind;

namespace {

DrillKind drill_index(const std::string& name) {
    const auto word = trade::folded(name);
    if (word == "fraction")
        return DrillKind::fraction;
    if (word == "number")
        return DrillKind::number;
    if (word == "letter")
        return DrillKind::letter;
    if (word == "metric")
        return DrillKind::metric;
    throw error::BadData("practice: no such drill index: '" + name + "'",
                         "the indexes are fraction, number, letter, metric");
}

std::vector<DrillKind> owned_indexes(const trade::Practice& practice, length::Unit unit) {
    std::vector<DrillKind> kinds;
    for (const auto& name : trade::split(practice.drill_indexes, ','))
        kinds.push_back(drill_index(name));
    if (!kinds.empty())
        return kinds;
    if (unit == length::Unit::millimetre)
        return {DrillKind::metric};
    return {DrillKind::fraction, DrillKind::number, DrillKind::letter};
}

} // namespace

Shop make_shop(const trade::Tables& tables, trade::Practice practice, length::Unit unit) {
    Shop shop{std::move(practice), {}, tables.oversize(), tables.drilled_holes()};
    for (const auto kind : owned_indexes(shop.practice, unit)) {
        const auto drills = tables.drills(kind);
        shop.drills.insert(shop.drills.end(), drills.begin(), drills.end());
    }
    std::sort(shop.drills.begin(), shop.drills.end(), [](const auto& a, const auto& b) {
        return a.diameter != b.diameter ? a.diameter < b.diameter : a.kind < b.kind;
    });
    return shop;
}

} // namespace match
