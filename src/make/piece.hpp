// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A piece of the make-list: what is to be turned, what it goes in and what it serves.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "match/answer.hpp"
#include "trade/body.hpp"
#include "trade/pilot.hpp"

namespace make {

enum class PieceKind {
    pilot,     // a new pilot, from bar
    sleeve,    // over an owned pilot of the right shank
    turn_down, // an owned soft pilot turned to a smaller diameter
};

// A screw that the piece makes possible: in which body, in which drill's hole.
struct Served {
    std::string screw; // as on the house list
    std::int64_t body = 0;
    std::optional<trade::Drill> drill; // absent: hole as measured, or reamed
    length::Range hole;
    std::optional<match::SizeClass> size;
    bool reamed = false; // the hole, for a shoulder
};

struct Piece {
    int item = 0; // on the list, from 1
    PieceKind kind = PieceKind::pilot;
    length::Range pilot;               // limits of the finished diameter that runs in the hole
    length::MaybeRange shank;          // limits; absent: to suit the body, or the owned pilot's own
    std::vector<trade::Body> bodies;   // those it goes in, by number
    std::optional<trade::Pilot> owned; // the pilot that is sleeved or turned down
    std::vector<Served> serves;        // by screw, then body
};

} // namespace make
