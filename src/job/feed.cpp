// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/feed.hpp"

#include <algorithm>
#include <string>

#include "error/error.hpp"
#include "length/print.hpp"

namespace job {

trade::Feed feed_for(std::string_view feed_class, length::Length cutter,
                     const std::vector<trade::Feed>& feeds) {
    const auto found = std::find_if(feeds.begin(), feeds.end(), [&](const trade::Feed& feed) {
        return feed.feed_class == feed_class && (!feed.above || cutter > *feed.above) &&
               (!feed.upto || cutter <= *feed.upto);
    });
    if (found == feeds.end())
        throw error::BadData("no feed for a cutter of " +
                             length::with_unit(cutter, length::Unit::millimetre) +
                             " in this class of material: '" + std::string(feed_class) + "'");
    return *found;
}

} // namespace job
