// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "drawing/symbols.hpp"

namespace drawing {

namespace {

// Millimetres of paper.
constexpr double k_symbol_width = 6;
constexpr double k_pad = 1.2; // beside text in a cell
constexpr double k_letter_box = 4.8;
constexpr double k_triangle_height = 2.2;
constexpr double k_triangle_half = 1.3;
constexpr double k_stem = 1.5;
constexpr double k_plane_gap = 1.5;
constexpr double k_plane_stub = 3;
constexpr double k_plane_arrow = 5;
constexpr double k_plane_letter = 3.5;

// On the baseline that puts capitals and figures in the middle.
double baseline(double middle_y, double size) {
    return middle_y + size * 0.36;
}

void draw_characteristic(Sketch& sketch, double left, double y, Characteristic characteristic) {
    if (characteristic == Characteristic::runout) {
        const Point tip{left + 4.6, y - 1.7};
        sketch.line({left + 1.2, y + 1.7}, tip, Pen::thin);
        sketch.arrow(tip, -45);
        return;
    }
    sketch.line({left + 1.2, y + 1.6}, {left + 4.8, y + 1.6}, Pen::thin);
    sketch.line({left + 3, y + 1.6}, {left + 3, y - 1.8}, Pen::thin);
}

} // namespace

double draw_tolerance(Sketch& sketch, double left, double middle_y, Characteristic characteristic,
                      std::string_view tolerance, std::string_view datum) {
    const double top = middle_y - k_frame_height / 2, bottom = middle_y + k_frame_height / 2;
    draw_characteristic(sketch, left, middle_y, characteristic);
    double right = left + k_symbol_width;
    sketch.box({left, top, right, bottom}, Pen::thin);
    for (const auto words : {tolerance, datum}) {
        const double from = right;
        right += width_of(words, k_dimension_size) + 2 * k_pad;
        sketch.box({from, top, right, bottom}, Pen::thin);
        sketch.text({from + k_pad, baseline(middle_y, k_dimension_size)}, words, k_dimension_size);
    }
    return right;
}

void draw_datum(Sketch& sketch, Point base, std::string_view letter) {
    const Point apex{base.x, base.y + k_triangle_height};
    sketch.polyline({{base.x - k_triangle_half, base.y},
                     {base.x + k_triangle_half, base.y},
                     apex,
                     {base.x - k_triangle_half, base.y}},
                    Pen::outline);
    const double box = apex.y + k_stem;
    sketch.line(apex, {apex.x, box}, Pen::thin);
    sketch.box({base.x - k_letter_box / 2, box, base.x + k_letter_box / 2, box + k_letter_box},
               Pen::thin);
    sketch.text({base.x, baseline(box + k_letter_box / 2, k_dimension_size)}, letter,
                k_dimension_size, Anchor::middle);
}

// A cone cut short, its small end to the left, and what is seen of it from there: in third angle on
// the side that it is seen from, in first angle beyond.
void draw_projection(Sketch& sketch, double left, double middle_y, Projection projection) {
    const bool third = projection == Projection::third_angle;
    const double rings = left + (third ? 2.6 : 10.4), cone = left + (third ? 7.5 : 0.5);
    for (const double radius : {1.1, 2.2})
        sketch.arc({rings, middle_y}, radius, 0, 360, Pen::frame);
    sketch.polyline({{cone, middle_y - 1.1},
                     {cone + 5, middle_y - 2.2},
                     {cone + 5, middle_y + 2.2},
                     {cone, middle_y + 1.1},
                     {cone, middle_y - 1.1}},
                    Pen::frame);
    sketch.line({left, middle_y}, {left + k_projection_width, middle_y}, Pen::centre);
}

void draw_cutting_plane(Sketch& sketch, double x, double top, double bottom,
                        std::string_view letter, double upper_x) {
    sketch.line({x, top - k_plane_gap}, {x, bottom + k_plane_gap}, Pen::centre);
    for (const bool up : {true, false}) {
        const double away = up ? -1 : 1;
        const double near = (up ? top : bottom) + away * k_plane_gap;
        const double far = near + away * k_plane_stub;
        sketch.line({x, near}, {x, far}, Pen::outline);
        sketch.line({x, far}, {x - k_plane_arrow, far}, Pen::thin);
        sketch.arrow({x - k_plane_arrow, far}, 180);
        const double middle = far + away * (1 + k_plane_letter / 2);
        sketch.text({up ? upper_x : x, baseline(middle, k_plane_letter)}, letter, k_plane_letter,
                    Anchor::middle);
    }
}

} // namespace drawing
