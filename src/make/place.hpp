// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// From a chosen offer to a piece with limits, and all that it serves.
#pragma once

#include "make/offer.hpp"

namespace make {

// `assigned` are the wishes that this piece answers for. Its limits are the usual ones of all their
// holes where those agree, else as near them as all the rooms allow, .001 in apart if they can be.
[[nodiscard]] Piece place(const Offer& offer, const std::vector<int>& assigned,
                          const std::vector<WishJob>& wishes, length::Unit unit);

} // namespace make
