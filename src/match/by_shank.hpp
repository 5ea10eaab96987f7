// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Things with pilot shanks, each for a hole, in the order of the shanks, to find those that slip in
// a bore that the teeth reach over: which for certain, and which perhaps. A thing is a number of
// the caller's.
#pragma once

#include <algorithm>
#include <cstdint>
#include <vector>

#include "trade/facts.hpp"
#include "trade/practice.hpp"

namespace match {

class ByShank {
  public:
    // Shanks of unknown size may slip in any bore.
    void add(std::uint32_t thing, const trade::Limits& shank, length::Length widest_hole);
    // After the last.
    void put_in_order();

    // Whether any will do, of those whose shank slips in every bore of the limits.
    template <typename Does>
    bool any_surely(const trade::Limits& bore, const trade::Practice& practice,
                    const Does& does) const {
        if (!bore)
            return false;
        const auto most = ((*bore).lo - practice.slip_least).nm();
        const auto first = first_at_least(least_, ((*bore).hi - practice.slip_most).nm());
        if (first == least_.size() || least_most_on_[first] > most)
            return false;
        for (auto i = first; i < least_.size() && least_[i] <= most; ++i)
            if (most_[i] <= most && (*bore).lo.nm() <= hole_[i] && does(things_[i]))
                return true;
        return false;
    }
    // Whether any will do, of those whose shank slips in some bore of the limits, or is unknown.
    template <typename Does>
    bool any_perhaps(const trade::Limits& bore, const trade::Practice& practice,
                     const Does& does) const {
        if (std::any_of(unknown_.begin(), unknown_.end(), does))
            return true;
        if (!bore)
            return std::any_of(things_.begin(), things_.end(), does);
        const auto least = ((*bore).lo - practice.slip_most).nm();
        const auto most = ((*bore).hi - practice.slip_least).nm();
        for (auto i = first_at_least(most_most_to_, least); i < least_.size() && least_[i] <= most;
             ++i)
            if (most_[i] >= least && (*bore).lo.nm() <= hole_[i] && does(things_[i]))
                return true;
        return false;
    }

  private:
    static std::size_t first_at_least(const std::vector<std::int32_t>& ascending,
                                      std::int64_t size) {
        return static_cast<std::size_t>(std::lower_bound(ascending.begin(), ascending.end(), size) -
                                        ascending.begin());
    }

    std::vector<std::uint32_t> things_;
    std::vector<std::int32_t> least_;         // size of the shank, nm, ascending
    std::vector<std::int32_t> most_;          // of each
    std::vector<std::int32_t> hole_;          // the widest that each can have
    std::vector<std::int32_t> least_most_on_; // the least most_ from here on
    std::vector<std::int32_t> most_most_to_;  // the greatest most_ up to here
    std::vector<std::uint32_t> unknown_;
};

} // namespace match
