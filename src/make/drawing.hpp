// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The drawing of a piece.
#pragma once

#include "drawing/drawing.hpp"
#include "make/spec.hpp"

namespace make {

// In mm: fits A4 and Letter upright with 12 mm of margin.
inline constexpr double k_drawing_width = 186;

// Side view to scale with its dimensions, section through the flat, notes and title block. Text
// overlaps neither other text nor lines. Lengths that are to suit are drawn as they usually are.
[[nodiscard]] drawing::Drawing draw(const Piece& piece, const Spec& spec,
                                    const drawing::Lettering& lettering);

} // namespace make
