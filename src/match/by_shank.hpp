// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Things with pilot shanks in the order of the shanks, to find those that slip in a bore: which for
// certain, and which perhaps. A thing is a number of the caller's.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "trade/facts.hpp"
#include "trade/practice.hpp"

namespace match {

class ByShank {
  public:
    // Shanks of unknown size may slip in any bore.
    void add(std::uint32_t thing, const trade::Limits& shank);
    // After the last.
    void put_in_order();

    // Holds every thing whose shank slips in every bore of the limits, none where there is none.
    [[nodiscard]] std::span<const std::uint32_t> surely(const trade::Limits& bore,
                                                        const trade::Practice& practice) const;
    // Holds every thing of known shank that slips in some bore of the limits.
    [[nodiscard]] std::span<const std::uint32_t> perhaps(const trade::Limits& bore,
                                                         const trade::Practice& practice) const;
    [[nodiscard]] std::span<const std::uint32_t> unknown() const { return unknown_; }

  private:
    std::vector<std::uint32_t> things_;
    std::vector<std::int32_t> least_;         // size of the shank, nm, ascending
    std::vector<std::int32_t> most_;          // of each
    std::vector<std::int32_t> least_most_on_; // the least most_ from here on
    std::vector<std::int32_t> most_most_to_;  // the greatest most_ up to here
    std::vector<std::uint32_t> unknown_;
};

} // namespace match
