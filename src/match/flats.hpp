// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The flats of pilots, to tell whether any covers a set screw for certain.
#pragma once

#include <algorithm>
#include <utility>
#include <vector>

#include "trade/facts.hpp"
#include "trade/practice.hpp"

namespace match {

class Flats {
  public:
    // One whose flat and shank length are measured.
    void add(const trade::PilotFacts& pilot) {
        const auto to_near_end = *pilot.shank_length - *pilot.flat_at;
        flats_.push_back({to_near_end.lo, to_near_end.hi - (*pilot.flat_length).lo});
    }
    // After the last.
    void put_in_order() {
        std::sort(flats_.begin(), flats_.end());
        for (auto i = flats_.size(); i-- > 1;)
            flats_[i - 1].second = std::min(flats_[i - 1].second, flats_[i].second);
    }
    // `body` has its set screw located. A screw's point is half_point to either side of its axis.
    [[nodiscard]] bool any_covers(const trade::BodyFacts& body, length::Length half_point) const {
        const auto at = *body.set_screw_at;
        const auto first = std::lower_bound(
            flats_.begin(), flats_.end(), at.hi + half_point,
            [](const Flat& flat, length::Length least) { return flat.first < least; });
        return first != flats_.end() && first->second <= at.lo - half_point;
    }

  private:
    // From the mouth of the bore: the flat surely reaches out to the first, and in to the second;
    // once in order, the second is the least from here on.
    using Flat = std::pair<length::Length, length::Length>;
    std::vector<Flat> flats_;
};

} // namespace match
