// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Pilots in the order of their shanks, to find those that slip in a bore: which for certain, and
// which perhaps. What is first asked of each stands beside its shank, since most are passed over.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <vector>

#include "trade/facts.hpp"
#include "trade/practice.hpp"

namespace match {

// What is known of the flat on a pilot's shank.
enum class Flat : std::uint8_t { none, measured, not_measured };

struct Shanked {
    std::uint32_t pilot = 0; // its place
    Flat flat = Flat::none;
    // The widest hole that it runs in and comes to ready, after work or measure first, by kind; at
    // most so wide, nm, or none.
    std::array<std::int32_t, 3> widest{};
};

class ByShank {
  public:
    // Shanks of unknown size may slip in any bore.
    void add(const Shanked& pilot, const trade::Limits& shank);
    // After the last.
    void put_in_order();

    // Whether any will do, of those whose shank slips in every bore of the limits.
    template <typename Does>
    bool any_surely(const trade::Limits& bore, const trade::Practice& practice,
                    const Does& does) const {
        if (!bore)
            return false;
        const auto most = ((*bore).lo - practice.slip_least).nm();
        const auto first = std::lower_bound(
            shanks_.begin(), shanks_.end(), ((*bore).hi - practice.slip_most).nm(),
            [](const Shank& shank, std::int64_t size) { return shank.least < size; });
        for (auto it = first; it != shanks_.end() && it->least <= most; ++it)
            if (it->most <= most && does(it->what))
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
            return std::any_of(shanks_.begin(), shanks_.end(),
                               [&](const Shank& shank) { return does(shank.what); });
        const auto least = ((*bore).lo - practice.slip_most).nm();
        const auto most = ((*bore).hi - practice.slip_least).nm();
        const auto first = std::lower_bound(
            shanks_.begin(), shanks_.end(), least,
            [](const Shank& shank, std::int64_t size) { return shank.most_to_here < size; });
        for (auto it = first; it != shanks_.end() && it->least <= most; ++it)
            if (it->most >= least && does(it->what))
                return true;
        return false;
    }

  private:
    struct Shank {
        std::int32_t least; // nm
        std::int32_t most;
        std::int32_t most_to_here; // the greatest `most` up to this one
        Shanked what;
    };

    std::vector<Shank> shanks_; // by `least`
    std::vector<Shanked> unknown_;
};

} // namespace match
