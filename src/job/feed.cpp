// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/feed.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <string>

#include "error/error.hpp"
#include "length/print.hpp"

namespace job {

namespace {

using length::Length;
using trade::Feed;

bool holds(const Feed& band, Length cutter) {
    return (!band.above || cutter > *band.above) && (!band.upto || cutter <= *band.upto);
}

// In proportion between two feeds a share of the way from one middle to the other.
Length between(Length from, Length to, double share) {
    return Length::from_nm(std::llround(static_cast<double>(from.nm()) +
                                        static_cast<double>((to - from).nm()) * share));
}

} // namespace

Length cutter_of(const Feed& band) {
    const auto from = band.above ? band.above->nm() : 0;
    const auto to = band.upto ? band.upto->nm() : 2 * from; // as the bands double
    return Length::from_nm((from + to) / 2);
}

Feed feed_for(std::string_view feed_class, Length cutter, const std::vector<Feed>& feeds) {
    std::vector<Feed> bands;
    for (const auto& feed : feeds)
        if (feed.feed_class == feed_class)
            bands.push_back(feed);
    const auto own = std::find_if(bands.begin(), bands.end(),
                                  [&](const Feed& band) { return holds(band, cutter); });
    if (own == bands.end())
        throw error::BadData("no feed for a cutter of " +
                             length::with_unit(cutter, length::Unit::millimetre) +
                             " in this class of material: '" + std::string(feed_class) + "'");
    const auto middle = cutter_of(*own);
    const bool small = cutter < middle;
    if (small ? own == bands.begin() : std::next(own) == bands.end())
        return *own;
    const auto& other = small ? *std::prev(own) : *std::next(own);
    const double share = static_cast<double>((cutter - middle).nm()) /
                         static_cast<double>((cutter_of(other) - middle).nm());
    Feed feed = *own;
    feed.least = between(own->least, other.least, share);
    feed.most = between(own->most, other.most, share);
    return feed;
}

} // namespace job
