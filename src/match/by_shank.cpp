// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/by_shank.hpp"

#include <algorithm>
#include <numeric>

namespace match {

namespace {

template <typename Value>
void reorder(std::vector<Value>& values, const std::vector<std::size_t>& order) {
    std::vector<Value> sorted;
    sorted.reserve(values.size());
    for (const auto at : order)
        sorted.push_back(values[at]);
    values = std::move(sorted);
}

} // namespace

void ByShank::add(std::uint32_t thing, const trade::Limits& shank, length::Length widest_hole) {
    if (!shank) {
        unknown_.push_back(thing);
        return;
    }
    things_.push_back(thing);
    least_.push_back(static_cast<std::int32_t>((*shank).lo.nm()));
    most_.push_back(static_cast<std::int32_t>((*shank).hi.nm()));
    hole_.push_back(static_cast<std::int32_t>(widest_hole.nm()));
}

void ByShank::put_in_order() {
    std::vector<std::size_t> order(things_.size());
    std::iota(order.begin(), order.end(), 0U);
    std::sort(order.begin(), order.end(), [this](std::size_t a, std::size_t b) {
        return std::pair(least_[a], a) < std::pair(least_[b], b);
    });
    reorder(things_, order);
    reorder(least_, order);
    reorder(most_, order);
    reorder(hole_, order);
    const auto least = [](std::int32_t a, std::int32_t b) { return std::min(a, b); };
    const auto most = [](std::int32_t a, std::int32_t b) { return std::max(a, b); };
    least_most_on_.resize(most_.size());
    most_most_to_.resize(most_.size());
    std::partial_sum(most_.rbegin(), most_.rend(), least_most_on_.rbegin(), least);
    std::partial_sum(most_.begin(), most_.end(), most_most_to_.begin(), most);
}

} // namespace match
