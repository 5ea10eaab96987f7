// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A drawing as plain geometry: lines, arcs, arrow heads and lettering in millimetres of paper, x to
// the right and y down. How it becomes a picture is for present/drawing_svg.hpp.
#pragma once

#include <string>
#include <vector>

#include "length/length.hpp"

namespace drawing {

struct Point {
    double x = 0;
    double y = 0;
};

// Kinds of line, as engineering drawing has them.
enum class Pen {
    outline, // thick: visible edges
    thin,    // dimension, extension and leader lines, hatching
    centre,  // chain: axes
    phantom, // chain, two short dashes: what is cut away, or was there before
    frame,   // of the panel and its title block
};

struct Line {
    Point from;
    Point to;
    Pen pen = Pen::outline;
};

// From `start` to `end` degrees, clockwise on paper, from the direction of x. start < end.
struct Arc {
    Point centre;
    double radius = 0;
    double start = 0;
    double end = 360;
    Pen pen = Pen::outline;
};

struct Arrow {
    Point tip;
    double direction = 0; // degrees, the way it points
};

enum class Anchor { start, middle, end };

struct Text {
    Point at; // on the baseline
    std::string words;
    double size = 0; // of the lettering
    Anchor anchor = Anchor::start;
    bool strong = false;
};

struct Box {
    double left = 0;
    double top = 0;
    double right = 0;
    double bottom = 0;
};

struct Drawing {
    double width = 0;
    double height = 0;
    std::string title; // `Item 3: pilot`
    std::vector<Line> lines;
    std::vector<Arc> arcs;
    std::vector<Arrow> arrows;
    std::vector<Text> texts;
};

inline constexpr double k_arrow_length = 2.5;
inline constexpr double k_arrow_width = 0.9;

struct Lettering {
    length::Unit unit = length::Unit::inch;
    bool both_units = false; // the other unit beneath, in brackets
};

// The room that a text takes, for any plain sans-serif lettering: as wide as the widest of them.
[[nodiscard]] Box box_of(const Text& text);

} // namespace drawing
