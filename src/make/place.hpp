// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// From a chosen offer to a piece with limits, and all that it serves.
#pragma once

#include "make/offer.hpp"

namespace make {

// `assigned` are the wishes that this piece answers for; its limits are as wide as they allow, at
// most the usual tolerance, as near the middle of good as they can be.
[[nodiscard]] Piece place(const Offer& offer, const std::vector<int>& assigned,
                          const std::vector<WishJob>& wishes);

} // namespace make
