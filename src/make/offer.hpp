// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What could be made: each offer is one piece, placed where it serves as many screws as it can.
#pragma once

#include <vector>

#include "make/room.hpp"

namespace make {

// A kind of shank: the bodies that a piece with it goes in.
struct ShankClass {
    PieceKind kind = PieceKind::pilot;
    const trade::Pilot* owned = nullptr; // sleeved or turned down
    std::vector<const Room*> rooms;      // in those bodies
    length::MaybeRange pilot_limits;     // what a sleeve or an owned pilot allows; absent: any
};

struct Offer {
    const ShankClass* shank = nullptr;
    length::Length pilot;           // least diameter of the piece
    std::vector<const Room*> rooms; // all that it fits
    std::vector<int> wishes;        // ascending
    std::vector<int> ranks;         // best size class for each
    int published = 0;              // over the wishes, how far their holes are from the close one
};

// New pilots: a class for every distinct bore, and one for each body whose bore is not known well
// enough for limits. With sleeves or turning down: a class for every owned pilot that allows it.
// `kept` are pilots that a served screw uses: they are not turned down.
[[nodiscard]] std::vector<ShankClass> shank_classes(const std::vector<Room>& rooms,
                                                    const match::Tools& tools,
                                                    const std::vector<std::int64_t>& kept,
                                                    const std::vector<WishJob>& wishes,
                                                    const Options& options);

// What is less to do comes first: turning down, a sleeve, a new pilot.
[[nodiscard]] int effort(PieceKind kind);

// The offers worth considering: by effort, then those with the published holes, then by shank and
// diameter. No two serve the same wishes equally well.
[[nodiscard]] std::vector<Offer> offers_of(const std::vector<ShankClass>& classes);

} // namespace make
