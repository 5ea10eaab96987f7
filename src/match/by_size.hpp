// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The places of a list in the order of a dimension, to find those in a window of sizes.
#pragma once

#include <algorithm>
#include <cstdint>
#include <numeric>
#include <vector>

#include "trade/rack.hpp"

namespace match {

class BySize {
  public:
    // `limits_at(place)` gives the dimension of each place from 0 to count - 1.
    template <typename LimitsAt>
    void index(std::size_t count, const LimitsAt& limits_at) {
        order_.resize(count);
        std::iota(order_.begin(), order_.end(), 0U);
        const auto known =
            std::stable_partition(order_.begin(), order_.end(), [&](std::uint32_t at) {
                return static_cast<bool>(limits_at(at));
            });
        known_ = static_cast<std::size_t>(known - order_.begin());
        std::sort(order_.begin(), known, [&](std::uint32_t a, std::uint32_t b) {
            return std::pair((*limits_at(a)).lo, a) < std::pair((*limits_at(b)).lo, b);
        });
        most_to_.clear();
        most_to_.reserve(known_);
        for (std::size_t i = 0; i < known_; ++i) {
            const auto hi = static_cast<std::int32_t>((*limits_at(order_[i])).hi.nm());
            most_to_.push_back(i == 0 ? hi : std::max(hi, most_to_.back()));
        }
    }

    // Each place in the window.
    template <typename LimitsAt, typename See>
    void each(const trade::Window& window, const LimitsAt& limits_at, const See& see) const {
        const auto first = window.sizes ? std::lower_bound(most_to_.begin(), most_to_.end(),
                                                           window.sizes->lo.nm()) -
                                              most_to_.begin()
                                        : 0;
        for (auto i = static_cast<std::size_t>(first); i < known_; ++i) {
            const auto limits = limits_at(order_[i]);
            if (window.sizes && (*limits).lo > window.sizes->hi)
                break;
            if (window.takes(limits))
                see(order_[i]);
        }
        for (std::size_t i = known_; i < order_.size(); ++i)
            see(order_[i]);
    }

  private:
    std::vector<std::uint32_t> order_; // by least size, the unknown ones last
    std::size_t known_ = 0;
    std::vector<std::int32_t> most_to_; // the greatest size up to here, nm: where a window begins
};

} // namespace match
