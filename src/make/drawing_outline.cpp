// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <algorithm>
#include <cmath>
#include <numbers>

#include "make/drawing_parts.hpp"

namespace make {

namespace {

constexpr double k_centre_past = 3; // centre line past the view, mm of paper
constexpr double k_degree = std::numbers::pi / 180;

// DIN 509: runs out at 15 degrees on the shank; of form F at 8 degrees on the shoulder.
std::vector<Point> undercut(const Proportions& s) {
    const double r = s.shank_dia / 2, floor = r - s.undercut_depth;
    const double wall = s.shank_length + s.face_depth;
    const double round = s.undercut_radius;
    const double slope = std::min(s.undercut_depth / std::tan(15 * k_degree), s.undercut_width / 2);
    std::vector<Point> points{{s.shank_length - s.undercut_width, r},
                              {s.shank_length - s.undercut_width + slope, floor}};
    for (int step = 0; step <= 6; ++step) {
        const double angle = step * 15 * k_degree;
        points.push_back(
            {wall - round + round * std::sin(angle), floor + round - round * std::cos(angle)});
    }
    if (s.face_depth > 0) {
        const double up = r + s.face_height;
        points.push_back({wall, up - s.face_depth / std::tan(8 * k_degree)});
        points.push_back({s.shank_length, up});
    }
    return points;
}

// Points of the upper edge, from the left end to the right.
std::vector<Point> upper_edge(const Proportions& s, bool with_flat) {
    const double r = s.shank_dia / 2, nose = s.nose_dia / 2;
    const double shoulder = s.shank_length, end = s.length();
    std::vector<Point> edge{{0, 0}, {0, r - s.shank_chamfer}, {s.shank_chamfer, r}};
    if (with_flat && s.flat_length > 0) {
        const double low = r - s.flat_depth;
        if (s.flat_at <= 0) // runs out at the end
            edge = {{0, 0}, {0, low}, {s.flat_length, low}, {s.flat_length, r}};
        else
            for (const Point p :
                 {Point{s.flat_at, r}, Point{s.flat_at, low}, Point{s.flat_at + s.flat_length, low},
                  Point{s.flat_at + s.flat_length, r}})
                edge.push_back(p);
    }
    if (s.undercut_width > 0) {
        for (const auto& p : undercut(s))
            edge.push_back(p);
    } else {
        edge.push_back({shoulder, r});
    }
    edge.push_back({shoulder, nose + s.corner_radius});
    edge.push_back({shoulder + s.corner_radius, nose});
    edge.push_back({end - s.nose_chamfer, nose});
    edge.push_back({end, nose - s.nose_chamfer});
    edge.push_back({end, 0});
    return edge;
}

void draw_edge(Sketch& sketch, const Frame& frame, const std::vector<Point>& edge, double sign) {
    std::vector<Point> points;
    for (const auto& p : edge)
        points.push_back(frame.at(p.x, p.y * sign));
    sketch.polyline(points, Pen::outline);
}

// A circle's edge seen from the side.
void draw_ring(Sketch& sketch, const Frame& frame, double along, double up) {
    sketch.line(frame.at(along, up), frame.at(along, -up), Pen::outline);
}

void draw_solid(Sketch& sketch, const Subject& subject, const Frame& frame) {
    const auto& s = subject.sizes;
    draw_edge(sketch, frame, upper_edge(s, true), 1);
    draw_edge(sketch, frame, upper_edge(s, false), -1);
    const double r = s.shank_dia / 2, nose = s.nose_dia / 2;
    if (s.shank_chamfer > 0 && (s.flat_at > 0 || s.flat_length <= 0))
        draw_ring(sketch, frame, s.shank_chamfer, r);
    if (s.undercut_width > 0)
        draw_ring(sketch, frame, s.shank_length - s.undercut_width, r);
    draw_ring(sketch, frame, s.shank_length, std::max(r, nose));
    draw_ring(sketch, frame, s.length() - s.nose_chamfer, nose);
}

// A sleeve is shown cut along its axis.
void draw_sleeve(Sketch& sketch, const Subject& subject, const Frame& frame) {
    const auto& s = subject.sizes;
    const double outside = s.nose_dia / 2, inside = s.bore / 2, end = s.nose_length;
    const double chamfer = std::min(s.nose_chamfer, (outside - inside) / 2);
    for (const double sign : {1.0, -1.0}) {
        draw_edge(sketch, frame,
                  {{0, inside},
                   {0, outside},
                   {end - chamfer, outside},
                   {end, outside - chamfer},
                   {end, inside},
                   {0, inside}},
                  sign);
    }
    draw_ring(sketch, frame, 0, inside);
    draw_ring(sketch, frame, end, inside);
    const double left = frame.x(0), corner = frame.x(end - chamfer), right = frame.x(end);
    sketch.hatch({left, frame.y(outside), corner, frame.y(inside)});
    sketch.hatch({corner, frame.y(outside - chamfer), right, frame.y(inside)});
    sketch.hatch({left, frame.y(-inside), corner, frame.y(-outside)});
    sketch.hatch({corner, frame.y(-inside), right, frame.y(chamfer - outside)});
}

// The nose as it is before it is turned down.
void draw_nose_now(Sketch& sketch, const Subject& subject, const Frame& frame) {
    const auto& s = subject.sizes;
    if (s.nose_dia_now <= s.nose_dia)
        return;
    const double now = s.nose_dia_now / 2;
    for (const double sign : {1.0, -1.0})
        sketch.polyline({frame.at(s.shank_length, s.nose_dia / 2 * sign),
                         frame.at(s.shank_length, now * sign), frame.at(s.length(), now * sign),
                         frame.at(s.length(), (s.nose_dia / 2 - s.nose_chamfer) * sign)},
                        Pen::phantom);
}

} // namespace

void draw_outline(Sketch& sketch, const Subject& subject, const Frame& frame) {
    if (subject.piece.kind == PieceKind::sleeve)
        draw_sleeve(sketch, subject, frame);
    else
        draw_solid(sketch, subject, frame);
    if (subject.piece.kind == PieceKind::turn_down)
        draw_nose_now(sketch, subject, frame);
    sketch.line({frame.x(0) - k_centre_past, frame.axis},
                {frame.x(subject.sizes.length()) + k_centre_past, frame.axis}, Pen::centre);
}

} // namespace make
