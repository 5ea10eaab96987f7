// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The feed of a counterbore.
#pragma once

#include <string_view>
#include <vector>

#include "trade/tables.hpp"

namespace job {

// The row of `feeds` for a class of material (`free`, `general`, `tough`) and a cutter: its band is
// over `above` up to and with `upto`. Throws error::BadData when no row covers them.
[[nodiscard]] trade::Feed feed_for(std::string_view feed_class, length::Length cutter,
                                   const std::vector<trade::Feed>& feeds);

} // namespace job
