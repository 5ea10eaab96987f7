// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A piece as it is turned: every dimension with its limits and where they come from.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "make/piece.hpp"
#include "make/steel.hpp"

namespace make {

// One dimension of the piece. Without limits it is `to_suit`: how to take it from the body.
struct Dimension {
    std::string name; // `pilot diameter`, `shank length`, ...
    length::MaybeRange limits;
    std::string to_suit;
    std::string source; // of the rule that gives the limits, or `common practice`
};

// How the nose stands to the shank.
enum class Form {
    shoulder, // nose larger: its back face seats on the face of the body
    plain,    // about alike: too little to seat on
    neck,     // nose smaller: the end of the shank lies level with the face of the body
};

// At the shoulder, so that the pilot seats square.
struct Undercut {
    std::string name; // `DIN 509 - F 0.4 x 0.2`: form, radius and depth in mm
    Dimension width;
    Dimension depth; // from the surface of the shank
    Dimension radius;
    std::optional<Dimension> face_depth; // of form F: into the shoulder
    length::Length face_height;          // of form F, about: up the shoulder from the shank
};

struct Spec {
    Form form = Form::shoulder;
    Dimension pilot_dia;
    Dimension pilot_length;
    Dimension shank_dia;
    Dimension shank_length;
    std::optional<Undercut> undercut;
    std::optional<Dimension> corner_radius; // of a neck, where an undercut would weaken it
    Dimension nose_chamfer;                 // at 45 degrees
    std::optional<Dimension> shank_chamfer; // at 45 degrees
    std::optional<Dimension> flat_at;       // free end of the shank to the near end of the flat
    std::optional<Dimension> flat_length;   // absent where the flat is marked out
    std::optional<Dimension> flat_depth;    // from the surface of the shank
    Dimension runout;                       // pilot to shank, total indicator reading
    std::optional<Dimension> squareness;    // of the shoulder to the shank
    std::optional<Dimension> sleeve_bore;   // of a sleeve: to slide over the owned pilot
    std::string finish;
    std::string material;
    std::string treatment;
    std::string treatment_source;
    std::string centres;            // to grind on; empty: none
    length::Length stock_dia;       // bar to turn it from; 0 for turning down
    length::Length cut_length;      // with facing allowance; 0 for turning down
    bool bought_bar = false;        // the shop has no bar large enough: one of this size is needed
    std::vector<std::string> steps; // in the order of work
    std::vector<std::string> cautions;
};

// `bars` are the diameters of the shop's stock, ascending; limits are in whole divisions of `unit`.
// Throws nothing on valid data: what cannot be known is to suit.
[[nodiscard]] Spec specify(const Piece& piece, const trade::Practice& practice,
                           const std::vector<length::Length>& bars, length::Unit unit,
                           const Treatment& treatment = {});

// Those that the piece has, in the order in which it is read. They point into `spec`.
[[nodiscard]] std::vector<const Dimension*> dimensions_of(const Spec& spec);

} // namespace make
