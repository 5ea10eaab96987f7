// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The feed of a counterbore.
#pragma once

#include <string_view>
#include <vector>

#include "trade/tables.hpp"

namespace job {

// For a class of material (`free`, `general`, `tough`) and the middle of what the cutter may
// measure. Each row is the feed at the middle of its band (over 1 in: at 1-1/2 in); between two
// middles the feed grows in proportion to the cutter, outside them it stays, so that it never jumps
// at a bound. Throws error::BadData when no band has the cutter.
[[nodiscard]] trade::Feed feed_for(std::string_view feed_class, length::Length cutter,
                                   const std::vector<trade::Feed>& feeds);

// The cutter whose feed a row gives: the middle of its band.
[[nodiscard]] length::Length cutter_of(const trade::Feed& band);

} // namespace job
