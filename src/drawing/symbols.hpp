// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Symbols of engineering drawing, in millimetres of paper: tolerance frames and datums (ISO 1101,
// ISO 5459, ASME Y14.5), the angle of projection (ISO 5456-2, ASME Y14.3), a cutting plane (ISO
// 128, ASME Y14.3).
#pragma once

#include "drawing/sketch.hpp"

namespace drawing {

enum class Characteristic { runout, squareness };

inline constexpr double k_frame_height = 5;

// Symbol, tolerance and datum in three cells, from `left` around `middle_y`. Returns where it ends.
double draw_tolerance(Sketch& sketch, double left, double middle_y, Characteristic characteristic,
                      std::string_view tolerance, std::string_view datum);

inline constexpr double k_datum_height = 8.5;

// A triangle hanging from `base`, with its letter in a box beneath.
void draw_datum(Sketch& sketch, Point base, std::string_view letter);

enum class Projection { first_angle, third_angle };

inline constexpr double k_projection_width = 13;

// From `left` around `middle_y`.
void draw_projection(Sketch& sketch, double left, double middle_y, Projection projection);

inline constexpr double k_plane_height = 9.5; // beyond the part, above and below

inline constexpr double k_plane_letter_room = 3.6; // that a letter takes along the part

// Through the part at `x` from `top` to `bottom`, looking left; the upper letter at `upper_x`.
void draw_cutting_plane(Sketch& sketch, double x, double top, double bottom,
                        std::string_view letter, double upper_x);

} // namespace drawing
