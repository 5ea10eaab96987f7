// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/by_shank.hpp"

#include <limits>
#include <tuple>

namespace match {

void ByShank::add(const Shanked& pilot, const trade::Limits& shank) {
    if (!shank) {
        unknown_.push_back(pilot);
        return;
    }
    const auto least = static_cast<std::int32_t>((*shank).lo.nm());
    const auto most = static_cast<std::int32_t>((*shank).hi.nm());
    shanks_.push_back({least, most, most, pilot});
}

void ByShank::put_in_order() {
    std::sort(shanks_.begin(), shanks_.end(), [](const Shank& a, const Shank& b) {
        return std::tie(a.least, a.what.pilot) < std::tie(b.least, b.what.pilot);
    });
    auto most = std::numeric_limits<std::int32_t>::min();
    for (auto& shank : shanks_)
        shank.most_to_here = most = std::max(most, shank.most);
}

} // namespace match
