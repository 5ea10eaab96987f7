// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The parts that a drawing is laid out from, top to bottom.
#pragma once

#include "drawing/scale.hpp"
#include "drawing/symbols.hpp"
#include "make/drawing.hpp"
#include "make/notes.hpp"
#include "make/proportions.hpp"

namespace make {

// What is drawn with is spoken of all through.
using namespace drawing;

// All that the parts need to know.
struct Subject {
    const Piece& piece;
    const Spec& spec;
    const Lettering& lettering;
    const Notes& notes;
    Proportions sizes;
    Scale scale;
    std::string_view date;

    // What the section through the flat is called, and the shank as a datum.
    static constexpr std::string_view k_section = "A";
    static constexpr std::string_view k_datum = "B";
};

inline constexpr double k_frame = 0.4;  // from the edge of the paper
inline constexpr double k_margin = 5.0; // from the edge to anything inside the frame
inline constexpr double k_most_view_length = 92;
inline constexpr double k_most_view_dia = 36;

// Where the view lies on paper; lengths of the piece in mm, from the left end and up from the axis.
struct Frame {
    double left = 0;
    double axis = 0;
    double factor = 1;

    [[nodiscard]] double x(double along) const { return left + along * factor; }
    [[nodiscard]] double y(double up) const { return axis - up * factor; }
    [[nodiscard]] Point at(double along, double up) const { return {x(along), y(up)}; }
};

// Visible edges, hatching and centre line of the side view.
void draw_outline(Sketch& sketch, const Subject& subject, const Frame& frame);

// The side view with its dimensions, from `top` down. Returns where it ends.
[[nodiscard]] double draw_view(Sketch& sketch, const Subject& subject, double top);

// Section through the flat, where there is one, and the notes. Returns where they end.
[[nodiscard]] double draw_section_and_notes(Sketch& sketch, const Subject& subject, double top);

// Title block. Returns where it ends.
[[nodiscard]] double draw_title_block(Sketch& sketch, const Subject& subject, double top);

} // namespace make
