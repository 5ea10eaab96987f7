// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Every dimension of a piece by a function of its own. Each comment says where the figure is from:
// the bodies and the practice table, a table named there, or common practice. Limits come out in
// whole divisions of `unit` and never wider than the figures they are taken from.
#pragma once

#include <optional>

#include "make/spec.hpp"

namespace make {

// Least wall of a sleeve, and least and most that its bore is over the pilot in it: it slides on
// by hand and leaves room for retaining compound or solder (common practice).
inline constexpr length::Length k_sleeve_wall = length::sixty_fourths(2);
inline constexpr length::Length k_sleeve_slide_least = length::inches_e5(50);
inline constexpr length::Length k_sleeve_slide_most = length::thousandths(2);

// What is known of the shank: its limits, the owned pilot's shank, or the bores it is fitted to.
[[nodiscard]] length::MaybeRange shank_as_known(const Piece& piece);

// A shoulder seats the pilot if it is so wide all round, at every limit (common practice).
inline constexpr length::Length k_least_shoulder = length::thousandths(15);

// A step of less than k_least_shoulder is none. With an unknown shank a shoulder is taken.
[[nodiscard]] Form form_of(const Piece& piece);

// The limits of the piece, under the drills that it serves (practice table, ISO 286-2).
[[nodiscard]] Dimension pilot_diameter(const Piece& piece, const trade::Practice& practice,
                                       length::Unit unit);

// One pilot diameter, up to the next 1/32 in or 0.5 mm, within .010 in; never under half the
// diameter (common practice). Turned down, it stays as long as it is. A sleeve is as long as the
// pilot in it, or up to .010 in shorter.
[[nodiscard]] Dimension pilot_length(const Piece& piece, length::Unit unit);

// The limits of the piece: the bores of all its bodies less the slip (practice table). Without
// limits it is fitted by trying, which is the usual way.
[[nodiscard]] Dimension shank_diameter(const Piece& piece, const trade::Practice& practice,
                                       length::Unit unit);

// The least bore depth less 1/32 in, so that the shoulder seats before the end does; +0 -.010 in
// (common practice). To suit where a body's bore depth is not known, or leaves under 3/16 in.
[[nodiscard]] Dimension shank_length(const Piece& piece, length::Unit unit);

// So much of bar to allow for a shank whose length is to suit: the upper shank length of the table
// of removable straight-pin pilots for its diameter (common practice).
[[nodiscard]] length::Length usual_shank_length(length::Length shank_dia);

// Relief of the corner at a shoulder, so that the pilot seats square: DIN 509 by the size of the
// shank, no deeper than a tenth of it.
[[nodiscard]] Undercut undercut_for(const length::Range& shank, const length::Range& nose,
                                    length::Unit unit);

// In the corner of a neck, where an undercut would weaken it: .010 to .015 in (common practice).
[[nodiscard]] Dimension corner_radius(length::Unit unit);

// .02 to .03 in at 45 degrees (common practice); half of that on pilots under 1/8 in.
[[nodiscard]] Dimension nose_chamfer(const Piece& piece, length::Unit unit);

// .010 to .020 in at 45 degrees, so that the shank enters the bore (common practice); half of that
// on shanks under 1/8 in.
[[nodiscard]] Dimension shank_chamfer(length::Length shank_dia, length::Unit unit);

// .001 in or 0.02 mm total indicator reading, nose to shank (common practice: body to nose within
// .001 to .002).
[[nodiscard]] Dimension runout(length::Unit unit);

// Half of that, shoulder to shank: both are turned in one chucking (common practice).
[[nodiscard]] Dimension squareness(length::Unit unit);

// .0005 to .002 in over the owned pilot as measured. To suit where the pilot is not known to
// .001 in.
[[nodiscard]] Dimension sleeve_bore(const Piece& piece, length::Unit unit);

// The flat under the set screw.
struct Flat {
    Dimension at;
    std::optional<Dimension> length;
    Dimension depth;
};

// For bodies that hold their pilot by a set screw, or may do so. The flat covers the points of all
// of them, 1/32 in beyond on both sides where the shank has room, for every value in the bodies'
// ranges and in `shank_length`. Where a body's screw or the length is not known, it is marked out
// from the body. Depth and usual length by shank diameter: table of removable straight-pin pilots
// (common practice, no published table).
[[nodiscard]] std::optional<Flat> flat_of(const Piece& piece, const trade::Practice& practice,
                                          const Dimension& shank_length, length::Unit unit);

// 1/32 in as it is said in the unit.
[[nodiscard]] std::string thirty_second(length::Unit unit);

// `body 12`, `bodies 12, 15 and 31`.
[[nodiscard]] std::string in_bodies(const Piece& piece);

} // namespace make
