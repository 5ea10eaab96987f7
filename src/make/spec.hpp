// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A piece as it is turned: every dimension with its limits and where they come from.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "make/piece.hpp"

namespace make {

// One dimension of the piece. Without limits it is `to_suit`: how to take it from the body.
struct Dimension {
    std::string name; // `pilot diameter`, `shank length`, ...
    length::MaybeRange limits;
    std::string to_suit;
    std::string source; // of the rule that gives the limits, or `common practice`
};

struct Spec {
    Dimension pilot_dia;
    Dimension pilot_length;
    Dimension shank_dia;
    Dimension shank_length;
    Dimension undercut_width; // at the shoulder, so that the pilot seats square
    Dimension undercut_depth;
    Dimension nose_chamfer; // at 45 degrees
    Dimension shank_chamfer;
    std::optional<Dimension> flat_at; // free end of the shank to the near end of the flat
    std::optional<Dimension> flat_length;
    std::optional<Dimension> flat_depth;
    Dimension runout;                     // pilot to shank, full indicator reading
    std::optional<Dimension> sleeve_bore; // of a sleeve: to slide over the owned pilot
    std::string finish;
    std::string material;
    std::string treatment;          // with the allowance for grinding
    length::Length stock_dia;       // bar to turn it from; 0 for turning down
    length::Length cut_length;      // with facing allowance
    std::vector<std::string> steps; // in the order of work
    std::vector<std::string> cautions;
};

// `bars` are the diameters of the shop's stock, ascending. Throws nothing on valid data: what
// cannot be known is to suit.
[[nodiscard]] Spec specify(const Piece& piece, const trade::Practice& practice,
                           const std::vector<length::Length>& bars);

} // namespace make
