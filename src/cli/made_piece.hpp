// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A piece of the make-list that has been made, on its way into the catalogue.
#pragma once

#include "cli/make_request.hpp"
#include "trade/pilot.hpp"

namespace cli {

// Item `item` of the make-list of the house screws, held against the made sizes. Throws
// error::NoSuchRecord (no such item), error::UsageError (an owned pilot that was turned down is
// measured, not added) or error::BadData (a size is not known, or is outside the item's limits; the
// hint names the item that it does fit).
[[nodiscard]] make::Piece made_piece(int item, const trade::Pilot& made,
                                     const make::Options& options, Context& context);

// Fills in what the list knows of a made piece where the user did not say: its note, and for a
// sleeve the shank of the pilot under it.
void complete_from(const make::Piece& piece, trade::Pilot& made);

} // namespace cli
