// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/by_shank.hpp"

#include <algorithm>
#include <numeric>

namespace match {

namespace {

using Sizes = std::vector<std::int32_t>;
using Span = std::span<const std::uint32_t>;

std::ptrdiff_t first_at_least(const Sizes& ascending, std::int64_t size) {
    return std::lower_bound(ascending.begin(), ascending.end(), size) - ascending.begin();
}
std::ptrdiff_t first_over(const Sizes& ascending, std::int64_t size) {
    return std::upper_bound(ascending.begin(), ascending.end(), size) - ascending.begin();
}

Span part(const std::vector<std::uint32_t>& things, std::ptrdiff_t first, std::ptrdiff_t last) {
    if (first >= last)
        return {};
    return Span(things).subspan(static_cast<std::size_t>(first),
                                static_cast<std::size_t>(last - first));
}

template <typename Value>
void reorder(std::vector<Value>& values, const std::vector<std::size_t>& order) {
    std::vector<Value> sorted;
    sorted.reserve(values.size());
    for (const auto at : order)
        sorted.push_back(values[at]);
    values = std::move(sorted);
}

} // namespace

void ByShank::add(std::uint32_t thing, const trade::Limits& shank) {
    if (!shank) {
        unknown_.push_back(thing);
        return;
    }
    things_.push_back(thing);
    least_.push_back(static_cast<std::int32_t>((*shank).lo.nm()));
    most_.push_back(static_cast<std::int32_t>((*shank).hi.nm()));
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
    const auto least = [](std::int32_t a, std::int32_t b) { return std::min(a, b); };
    const auto most = [](std::int32_t a, std::int32_t b) { return std::max(a, b); };
    least_most_on_.resize(most_.size());
    most_most_to_.resize(most_.size());
    std::partial_sum(most_.rbegin(), most_.rend(), least_most_on_.rbegin(), least);
    std::partial_sum(most_.begin(), most_.end(), most_most_to_.begin(), most);
}

std::span<const std::uint32_t> ByShank::surely(const trade::Limits& bore,
                                               const trade::Practice& practice) const {
    if (!bore)
        return {};
    const auto least = ((*bore).hi - practice.slip_most).nm();
    const auto most = ((*bore).lo - practice.slip_least).nm();
    const auto first = first_at_least(least_, least);
    if (first == static_cast<std::ptrdiff_t>(least_.size()) ||
        least_most_on_[static_cast<std::size_t>(first)] > most)
        return {};
    return part(things_, first, first_over(least_, most));
}

std::span<const std::uint32_t> ByShank::perhaps(const trade::Limits& bore,
                                                const trade::Practice& practice) const {
    if (!bore)
        return things_;
    return part(things_, first_at_least(most_most_to_, ((*bore).lo - practice.slip_most).nm()),
                first_over(least_, ((*bore).hi - practice.slip_least).nm()));
}

} // namespace match
