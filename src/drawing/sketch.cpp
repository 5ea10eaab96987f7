// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "drawing/sketch.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawing {

namespace {

constexpr double k_gap = 1.0;      // from an edge to its extension line, and around text
constexpr double k_past = 1.5;     // extension line past its dimension line
constexpr double k_tail = 5.0;     // of an arrow from outside
constexpr double k_shoulder = 2.0; // level part of a leader
constexpr double k_hatch_pitch = 1.5;
constexpr double k_least_hatched = 0.6;

// Room between the extension lines for both arrows.
bool arrows_fit(double span) {
    return span >= 2 * k_arrow_length + 1;
}

} // namespace

void Sketch::line(Point from, Point to, Pen pen) {
    drawing_.lines.push_back({from, to, pen});
}

void Sketch::box(const Box& box, Pen pen) {
    polyline({{box.left, box.top},
              {box.right, box.top},
              {box.right, box.bottom},
              {box.left, box.bottom},
              {box.left, box.top}},
             pen);
}

void Sketch::polyline(const std::vector<Point>& points, Pen pen) {
    for (std::size_t i = 1; i < points.size(); ++i)
        line(points[i - 1], points[i], pen);
}

void Sketch::arc(Point centre, double radius, double start, double end, Pen pen) {
    drawing_.arcs.push_back({centre, radius, start, end, pen});
}

void Sketch::hatch(const Box& area) {
    if (area.bottom - area.top < k_least_hatched)
        return;
    const double pitch = k_hatch_pitch * std::numbers::sqrt2;
    for (double sum = std::ceil((area.left + area.top) / pitch) * pitch;
         sum < area.right + area.bottom; sum += pitch) {
        const double from = std::max(area.left, sum - area.bottom);
        const double to = std::min(area.right, sum - area.top);
        if (from < to)
            line({from, sum - from}, {to, sum - to}, Pen::thin);
    }
}

void Sketch::text(Point at, std::string_view words, double size, Anchor anchor, bool strong) {
    if (!words.empty())
        drawing_.texts.push_back({at, std::string(words), size, anchor, strong});
}

void Sketch::stack(double x, double middle_y, const Stack& stack, double size, Anchor anchor) {
    const Box unit = box_of({{0, 0}, "0", size, Anchor::start, false});
    double y = middle_y - height_of(stack, size) / 2 - unit.top;
    for (const auto& line : stack) {
        text({x, y}, line, size, anchor);
        y += size * k_line_pitch;
    }
}

void Sketch::arrow(Point tip, double direction) {
    drawing_.arrows.push_back({tip, direction});
}

void Sketch::across(const Across& where, const Stack& words) {
    const double y = where.y;
    const double beyond = y > where.from_edge ? 1 : -1;
    line({where.from, where.from_edge + beyond * k_gap}, {where.from, y + beyond * k_past},
         Pen::thin);
    line({where.to, where.to_edge + beyond * k_gap}, {where.to, y + beyond * k_past}, Pen::thin);

    const double span = where.to - where.from;
    const double width = width_of(words, k_dimension_size);
    const double around = width / 2 + k_gap;
    const double centre = (where.from + where.to) / 2;
    if (span >= width + 2 * (k_tail + k_gap)) { // clear of a neighbour's arrow from outside
        line({where.from, y}, {centre - around, y}, Pen::thin);
        line({centre + around, y}, {where.to, y}, Pen::thin);
        arrow({where.from, y}, 180);
        arrow({where.to, y}, 0);
        stack(centre, y, words, k_dimension_size, Anchor::middle);
        return;
    }
    const bool inside = arrows_fit(span);
    const bool left = where.outside == Side::left;
    const double tail = inside ? 0 : k_tail;
    const double start = where.from - (left ? k_tail : tail);
    const double end = where.to + (left ? tail : k_tail);
    if (inside) {
        line({start, y}, {end, y}, Pen::thin);
        arrow({where.from, y}, 180);
        arrow({where.to, y}, 0);
    } else {
        line({start, y}, {where.from, y}, Pen::thin);
        line({where.to, y}, {end, y}, Pen::thin);
        arrow({where.from, y}, 0);
        arrow({where.to, y}, 180);
    }
    stack(left ? start - k_gap : end + k_gap, y, words, k_dimension_size,
          left ? Anchor::end : Anchor::start);
}

void Sketch::upright(const Upright& where, const Stack& words) {
    const double away = where.side == Side::left ? -1 : 1;
    for (const double y : {where.from, where.to})
        line({where.edge + away * k_gap, y}, {where.x + away * k_past, y}, Pen::thin);
    if (arrows_fit(where.to - where.from)) {
        line({where.x, where.from}, {where.x, where.to}, Pen::thin);
        arrow({where.x, where.from}, 270);
        arrow({where.x, where.to}, 90);
    } else {
        line({where.x, where.from - k_tail}, {where.x, where.from}, Pen::thin);
        arrow({where.x, where.from}, 90);
        if (where.datum_below) { // ISO 5459: it stands for the arrow
            line({where.x, where.from}, {where.x, where.to}, Pen::thin);
        } else {
            line({where.x, where.to}, {where.x, where.to + k_tail}, Pen::thin);
            arrow({where.x, where.to}, 270);
        }
    }
    stack(where.x + away * (k_past + k_gap), (where.from + where.to) / 2, words, k_dimension_size,
          where.side == Side::left ? Anchor::end : Anchor::start);
}

void Sketch::leader(Point tip, Point elbow, Side side, const Stack& words) {
    const double away = side == Side::left ? -1 : 1;
    const Point end{elbow.x + away * k_shoulder, elbow.y};
    line(tip, elbow, Pen::thin);
    line(elbow, end, Pen::thin);
    const double direction = std::atan2(tip.y - elbow.y, tip.x - elbow.x);
    arrow(tip, direction * 180 / std::numbers::pi);
    stack(end.x + away * k_gap, end.y, words, k_dimension_size,
          side == Side::left ? Anchor::end : Anchor::start);
}

} // namespace drawing
