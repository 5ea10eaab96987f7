// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Lines of one kind are gathered into one path; widths and dashes are those of engineering drawing
// (ISO 128: thick twice the thin) at a size that prints well.
#include "present/drawing_svg.hpp"

#include <fmt/format.h>

#include <cmath>
#include <iterator>
#include <numbers>
#include <string_view>

#include "present/xml.hpp"

namespace present {

using drawing::Pen;
using drawing::Point;

namespace {

struct Stroke {
    Pen pen;
    std::string_view width;
    std::string_view dashes; // empty: solid
};
constexpr Stroke k_strokes[]{
    {Pen::thin, "0.18", ""},
    {Pen::frame, "0.3", ""},
    {Pen::centre, "0.18", "6 1 1.2 1"},
    {Pen::phantom, "0.18", "4 0.8 0.8 0.8 0.8 0.8"},
    {Pen::outline, "0.5", ""},
};

// Microns of paper are fine enough; zeros at the end are dropped.
std::string number(double value) {
    auto text = fmt::format("{:.3f}", value);
    while (text.back() == '0')
        text.pop_back();
    if (text.back() == '.')
        text.pop_back();
    return text == "-0" ? "0" : text;
}

std::string at(Point point) {
    return number(point.x) + " " + number(point.y);
}

Point on(Point centre, double radius, double degrees) {
    const double angle = degrees * std::numbers::pi / 180;
    return {centre.x + radius * std::cos(angle), centre.y + radius * std::sin(angle)};
}

bool same(Point a, Point b) {
    return std::hypot(a.x - b.x, a.y - b.y) < 1e-6;
}

// Lines that follow on each other are drawn in one go, so that corners are joined and dashes run
// on.
std::string path_of(const drawing::Drawing& drawing, Pen pen) {
    std::string path;
    Point last{-1, -1};
    for (const auto& line : drawing.lines) {
        if (line.pen != pen)
            continue;
        if (path.empty() || !same(last, line.from))
            path += "M" + at(line.from);
        path += "L" + at(line.to);
        last = line.to;
    }
    for (const auto& arc : drawing.arcs) {
        if (arc.pen != pen)
            continue;
        const double middle = (arc.start + arc.end) / 2;
        path += "M" + at(on(arc.centre, arc.radius, arc.start));
        for (const double end : {middle, arc.end}) // in two: a full circle has no single arc
            path += fmt::format("A{0} {0} 0 0 1 {1}", number(arc.radius),
                                at(on(arc.centre, arc.radius, end)));
    }
    return path;
}

std::string strokes(const drawing::Drawing& drawing) {
    std::string svg;
    for (const auto& stroke : k_strokes) {
        const auto path = path_of(drawing, stroke.pen);
        if (path.empty())
            continue;
        const auto dashes = stroke.dashes.empty()
                                ? std::string()
                                : fmt::format(" stroke-dasharray=\"{}\"", stroke.dashes);
        svg += fmt::format("<path d=\"{}\" fill=\"none\" stroke=\"#000\" stroke-width=\"{}\" "
                           "stroke-linejoin=\"round\"{}/>\n",
                           path, stroke.width, dashes);
    }
    return svg;
}

std::string arrows(const drawing::Drawing& drawing) {
    std::string path;
    const double spread =
        std::atan2(drawing::k_arrow_width / 2, drawing::k_arrow_length) * 180 / std::numbers::pi;
    const double side = std::hypot(drawing::k_arrow_width / 2, drawing::k_arrow_length);
    for (const auto& arrow : drawing.arrows) {
        const double back = arrow.direction + 180;
        path += fmt::format("M{}L{}L{}z", at(arrow.tip), at(on(arrow.tip, side, back - spread)),
                            at(on(arrow.tip, side, back + spread)));
    }
    return path.empty() ? path : fmt::format("<path d=\"{}\" fill=\"#000\"/>\n", path);
}

std::string text_element(const drawing::Text& text) {
    std::string_view anchor = "start";
    if (text.anchor != drawing::Anchor::start)
        anchor = text.anchor == drawing::Anchor::middle ? "middle" : "end";
    return fmt::format("<text x=\"{}\" y=\"{}\" font-size=\"{}\" text-anchor=\"{}\"{}>{}</text>\n",
                       number(text.at.x), number(text.at.y), number(text.size), anchor,
                       text.strong ? " font-weight=\"bold\"" : "", xml_text(text.words));
}

} // namespace

std::string svg_element(const drawing::Drawing& drawing) {
    std::string svg = fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"{0}mm\" "
        "height=\"{1}mm\" viewBox=\"0 0 {0} {1}\" font-family=\"Arial, Helvetica, sans-serif\">\n"
        "<title>{2}</title>\n"
        "<rect width=\"{0}\" height=\"{1}\" fill=\"#fff\"/>\n",
        number(drawing.width), number(drawing.height), xml_text(drawing.title));
    svg += strokes(drawing) + arrows(drawing);
    for (const auto& text : drawing.texts)
        svg += text_element(text);
    return svg + "</svg>\n";
}

std::string svg_file(const drawing::Drawing& drawing) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg_element(drawing);
}

} // namespace present
