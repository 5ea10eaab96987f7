// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Putting things on a drawing: lines, stacks of text, and dimensions with their arrows. A dimension
// takes its text between its arrows where it fits, else outside on the side that is kept free.
#pragma once

#include "drawing/drawing.hpp"
#include "drawing/lettering.hpp"

namespace drawing {

enum class Side { left, right };

// A dimension along x, drawn at height `y`.
struct Across {
    double from = 0;
    double to = 0; // > from
    double y = 0;
    double from_edge = 0; // y of the edges that the extension lines start at
    double to_edge = 0;
    Side outside = Side::left; // where the text goes if it does not fit between
};

// A dimension along y, drawn at `x`, its text beside it on `side`.
struct Upright {
    double x = 0;
    double from = 0;
    double to = 0;   // > from
    double edge = 0; // x that the extension lines start at
    Side side = Side::left;
    bool datum_below = false; // leave the lower end to a datum where arrows do not fit between
};

class Sketch {
  public:
    explicit Sketch(Drawing& drawing) : drawing_(drawing) {}

    void line(Point from, Point to, Pen pen);
    void box(const Box& box, Pen pen);
    void polyline(const std::vector<Point>& points, Pen pen);
    void arc(Point centre, double radius, double start, double end, Pen pen);
    // Slanting lines through an area that is cut, the same all over the drawing, so that areas that
    // touch are hatched as one. Very thin ones are left white.
    void hatch(const Box& area);
    void text(Point at, std::string_view words, double size, Anchor anchor = Anchor::start,
              bool strong = false);
    // Its middle height at `middle_y`, `x` being where the anchor says.
    void stack(double x, double middle_y, const Stack& stack, double size, Anchor anchor);

    void across(const Across& where, const Stack& words);
    void upright(const Upright& where, const Stack& words);
    // An arrow at `tip`, a line to `elbow`, a short level line towards the text, the text.
    void leader(Point tip, Point elbow, Side side, const Stack& words);

    // `direction` in degrees, the way it points.
    void arrow(Point tip, double direction);

  private:
    Drawing& drawing_;
};

} // namespace drawing
