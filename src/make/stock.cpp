// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/stock.hpp"

#include <algorithm>
#include <map>

#include "length/grid.hpp"

namespace make {

using length::Length;

namespace {

constexpr Length k_clean_up = length::sixty_fourths(1);

BarPlan plan_bar(Length diameter, std::vector<Cut> cuts, Length kerf, Length grip) {
    std::stable_sort(cuts.begin(), cuts.end(), [](const Cut& a, const Cut& b) {
        return a.length != b.length ? a.length > b.length : a.item < b.item;
    });
    Length total = grip;
    for (const auto& cut : cuts)
        total = total + cut.length + kerf;
    return {diameter, std::move(cuts), kerf, total};
}

} // namespace

std::vector<BarPlan> plan_stock(const std::vector<Piece>& pieces, const std::vector<Spec>& specs,
                                Length kerf, Length grip) {
    std::map<Length, std::vector<Cut>> by_bar;
    for (std::size_t i = 0; i < pieces.size(); ++i)
        if (specs[i].stock_dia > Length())
            by_bar[specs[i].stock_dia].push_back({pieces[i].item, specs[i].cut_length});
    std::vector<BarPlan> plans;
    for (auto& [diameter, cuts] : by_bar)
        plans.push_back(plan_bar(diameter, std::move(cuts), kerf, grip));
    return plans;
}

BarChoice bar_for(Length finished, const std::vector<Length>& bars, length::Unit unit) {
    const Length least = finished + k_clean_up;
    const auto found = std::lower_bound(bars.begin(), bars.end(), least);
    if (found != bars.end())
        return {*found, true};
    return {round_up(least, in_unit(unit, length::sixty_fourths(4), length::millimetres(1))),
            false};
}

std::vector<Length> usual_bars(length::Unit unit) {
    std::vector<Length> bars;
    if (unit == length::Unit::inch)
        for (int sixteenths = 2; sixteenths <= 16; ++sixteenths)
            bars.push_back(length::sixty_fourths(4) * sixteenths);
    else
        for (int mm = 3; mm <= 25; ++mm)
            bars.push_back(length::millimetres(mm));
    return bars;
}

} // namespace make
