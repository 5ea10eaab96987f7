// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The drawing of a piece.
#pragma once

#include <string>
#include <string_view>

#include "drawing/drawing.hpp"
#include "make/spec.hpp"

namespace make {

// In mm: fits A4 and Letter upright with 12 mm of margin.
inline constexpr double k_drawing_width = 186;

// Side view to scale with its dimensions, section through the flat, notes and title block, by the
// habits of ASME Y14.5 in inches and of ISO 128 and 129 in millimetres. Text overlaps neither other
// text nor lines. Lengths that are to suit are drawn as they usually are. `date` is ISO 8601.
[[nodiscard]] drawing::Drawing draw(const Piece& piece, const Spec& spec,
                                    const drawing::Lettering& lettering, std::string_view date);

// `20261224-03`: item 3 of the list of that day.
[[nodiscard]] std::string drawing_number(const Piece& piece, std::string_view date);

} // namespace make
