// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The sizes that a piece is drawn at, in millimetres: the middle of its limits, and for what is to
// suit the size that it usually has.
#pragma once

#include "make/spec.hpp"

namespace make {

struct Proportions {
    double nose_dia = 0;
    double nose_length = 0;
    double nose_chamfer = 0;
    double shank_dia = 0; // 0: a sleeve has none
    double shank_length = 0;
    double shank_chamfer = 0;
    double undercut_width = 0; // 0: none
    double undercut_depth = 0;
    double undercut_radius = 0;
    double face_depth = 0; // 0: the undercut leaves the shoulder whole
    double face_height = 0;
    double corner_radius = 0; // 0: none
    double flat_at = 0;
    double flat_length = 0; // 0: no flat, or marked out
    double flat_depth = 0;
    double bore = 0;         // of a sleeve
    double nose_dia_now = 0; // of a pilot that is turned down
    bool exact = true;       // false: something is drawn as it usually is

    [[nodiscard]] double length() const { return shank_length + nose_length; }
    [[nodiscard]] double largest_dia() const;
};

[[nodiscard]] Proportions proportions_of(const Piece& piece, const Spec& spec);

} // namespace make
