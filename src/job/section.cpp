// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/section.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "drawing/lettering.hpp"
#include "drawing/scale.hpp"
#include "drawing/sketch.hpp"
#include "job/shop_text.hpp"
#include "length/print.hpp"

namespace job {

using namespace drawing;

namespace {

constexpr double k_side = 34.5; // paper beside the view, for its dimensions
constexpr double k_above = 17;  // and over and under it
constexpr double k_below = 17;
constexpr double k_most_high = 42;
constexpr double k_past = 3;      // axis and screw past the part
constexpr double k_dimension = 7; // an upright dimension line from the view
constexpr double k_level = 11;    // a level one
constexpr double k_half_point = 59 * std::numbers::pi / 180;

double middle_mm(const length::Range& range) {
    return (length::as_mm(range.lo) + length::as_mm(range.hi)) / 2;
}

// What is drawn, in mm of the part; y from the top face down.
struct View {
    double counterbore = 0;
    double depth = 0;
    double hole = 0;
    double edge = 0;     // of the hole at the floor; hole: it is not broken
    double bottom = 0;   // of the part
    double hole_end = 0; // where a blind hole's full diameter ends; bottom: it goes through
    bool broken_off = false;
    double head = 0;
    double head_top = 0;
    double washer_top = 0; // depth: there is none
    double washer = 0;
    double screw = 0;

    [[nodiscard]] double half_width() const { return counterbore * 0.85; }
};

// Proportions of what nobody gave: only the picture depends on them.
void add_bottom(View& view, const match::Question& question) {
    if (question.thick) {
        view.bottom = view.hole_end = middle_mm(*question.thick);
        return;
    }
    view.broken_off = true;
    view.bottom = view.hole_end = view.depth + std::max(view.hole * 1.4, view.depth * 0.6);
    if (question.blind) {
        view.hole_end = middle_mm(*question.blind);
        view.bottom = view.hole_end + view.hole;
    }
}

std::optional<View> view_of(const Sheet& sheet) {
    const auto& question = sheet.question;
    const auto& screw = question.screw;
    if (!sheet.usable() || !screw.head_dia || !screw.head_height || !screw.screw_dia)
        return std::nullopt;
    const auto& answer = *sheet.answer;
    if (!answer.counterbore || !answer.hole || !answer.depth)
        return std::nullopt;
    View view;
    view.counterbore = middle_mm(*answer.counterbore);
    view.depth = length::as_mm(*answer.depth);
    view.hole = middle_mm(*answer.hole);
    view.edge = view.hole;
    if (screw.fillet_dia)
        view.edge = std::max(view.hole, length::as_mm(*screw.fillet_dia));
    view.head = middle_mm(*screw.head_dia);
    view.screw = middle_mm(*screw.screw_dia);
    view.washer_top = view.depth;
    if (question.washer && question.washer->thickness) {
        view.washer_top -= middle_mm(*question.washer->thickness);
        view.washer = middle_mm(question.washer->outside_dia);
    }
    view.head_top = view.washer_top - middle_mm(*screw.head_height);
    add_bottom(view, question);
    return view;
}

// The view on paper: `axis` across, `top` the top face.
struct Paper {
    double axis = 0;
    double top = 0;
    double factor = 1;

    [[nodiscard]] Point at(double x, double y) const {
        return {axis + x * factor, top + y * factor};
    }
    [[nodiscard]] Box box(double left, double upper, double right, double lower) const {
        return {axis + left * factor, top + upper * factor, axis + right * factor,
                top + lower * factor};
    }
};

// One half of the part in section; `side` is -1 or 1.
void draw_half(Sketch& sketch, const View& view, const Paper& paper, double side) {
    const double wide = view.half_width();
    const double broken = (view.edge - view.hole) / 2; // at 45 degrees
    const auto at = [&](double x, double y) { return paper.at(side * x, y); };
    const auto hatched = [&](double inner, double upper, double lower) {
        sketch.hatch(paper.box(std::min(side * inner, side * wide), upper,
                               std::max(side * inner, side * wide), lower));
    };
    sketch.polyline({at(wide, 0), at(view.counterbore / 2, 0), at(view.counterbore / 2, view.depth),
                     at(view.edge / 2, view.depth), at(view.hole / 2, view.depth + broken),
                     at(view.hole / 2, view.hole_end)},
                    Pen::outline);
    const auto bottom = view.broken_off ? Pen::phantom : Pen::outline;
    const double inner = view.hole_end < view.bottom ? 0 : view.hole / 2;
    sketch.line(at(inner, view.bottom), at(wide, view.bottom), bottom);
    sketch.line(at(wide, 0), at(wide, view.bottom), Pen::phantom);
    hatched(view.counterbore / 2, 0, view.depth);
    hatched(view.edge / 2, view.depth, view.depth + broken);
    hatched(view.hole / 2, view.depth + broken, view.hole_end);
    if (view.hole_end < view.bottom) {
        const double point = view.hole / 2 / std::tan(k_half_point);
        sketch.line(at(view.hole / 2, view.hole_end), at(0, view.hole_end + point), Pen::outline);
        hatched(0, view.hole_end + point, view.bottom);
    }
}

void draw_screw(Sketch& sketch, const View& view, const Paper& paper, bool blind) {
    const double end = blind ? view.hole_end : view.bottom + k_past / paper.factor;
    sketch.box(paper.box(-view.head / 2, view.head_top, view.head / 2, view.washer_top),
               Pen::outline);
    if (view.washer_top < view.depth)
        sketch.box(paper.box(-view.washer / 2, view.washer_top, view.washer / 2, view.depth),
                   Pen::outline);
    for (const double side : {-0.5, 0.5})
        sketch.line(paper.at(side * view.screw, view.depth), paper.at(side * view.screw, end),
                    Pen::thin);
    sketch.line(paper.at(-view.screw / 2, end), paper.at(view.screw / 2, end), Pen::thin);
}

// A figure as the sheet's table has it.
Stack lettered(const length::Range& range, const Lettering& lettering, Grain grain,
               std::string_view sign) {
    const auto text = [&](length::Unit unit) {
        auto words = std::string(sign) + shop_text(range, unit, grain);
        if (const auto to = words.find(" to "); to != std::string::npos)
            words.replace(to, 4, "-");
        return words;
    };
    Stack stack{text(lettering.unit)};
    if (lettering.both_units)
        stack.push_back("[" +
                        text(lettering.unit == length::Unit::inch ? length::Unit::millimetre
                                                                  : length::Unit::inch) +
                        "]");
    return stack;
}

Stack lettered(const Sheet& sheet, std::string_view name, const Lettering& lettering,
               std::string_view sign) {
    const auto* figure = sheet.figure(name);
    if (!figure)
        return {};
    return lettered(std::get<length::Range>(figure->value), lettering, figure->grain, sign);
}

void draw_dimensions(Sketch& sketch, const View& view, const Paper& paper, const Sheet& sheet,
                     const Lettering& lettering) {
    const auto& question = sheet.question;
    constexpr std::string_view k_dia = "Ø";
    const double wide = view.half_width();
    const auto cut = paper.box(-view.counterbore / 2, 0, view.counterbore / 2, view.depth);
    const auto hole = paper.box(-view.hole / 2, view.depth, view.hole / 2, view.bottom);
    const double over = std::min(cut.top, paper.at(0, view.head_top).y) - k_level;
    sketch.across({cut.left, cut.right, over, cut.top, cut.top, Side::left},
                  lettered(sheet, "counterbore", lettering, k_dia));
    const double under = hole.bottom + k_level;
    sketch.across(
        {hole.left, hole.right, under, hole.bottom, hole.bottom, Side::left},
        lettered(sheet, sheet.answer->reamed ? "hole, reamed" : "hole", lettering, k_dia));
    const auto right = paper.at(wide, 0);
    sketch.upright({right.x + k_dimension, cut.top, cut.bottom, right.x, Side::right},
                   lettered(sheet, "stop travel", lettering, {}));
    const auto left = paper.at(-wide, 0);
    const auto& deep = question.thick ? question.thick : question.blind;
    if (deep)
        sketch.upright(
            {left.x - k_dimension, cut.top, paper.at(0, view.hole_end).y, left.x, Side::left},
            lettered(*deep, lettering, Grain::usual, {}));
}

} // namespace

std::optional<Drawing> draw_section(const Sheet& sheet, const Lettering& lettering) {
    const auto view = view_of(sheet);
    if (!view)
        return std::nullopt;
    const double proud = std::max(0.0, -view->head_top);
    const auto scale = fitting_scale(view->bottom + proud, k_most_high, 2 * view->half_width(),
                                     k_section_width - 2 * k_side);
    Drawing drawing;
    drawing.width = k_section_width;
    drawing.title = "Section through the hole, " + scale.name;
    const Paper paper{k_section_width / 2, k_above + proud * scale.factor, scale.factor};
    Sketch sketch(drawing);
    for (const double side : {-1.0, 1.0})
        draw_half(sketch, *view, paper, side);
    draw_screw(sketch, *view, paper, sheet.question.blind.has_value());
    const double bottom = paper.at(0, view->bottom).y;
    sketch.line({paper.axis, paper.at(0, view->head_top).y - k_past},
                {paper.axis, bottom + 2 * k_past}, Pen::centre);
    draw_dimensions(sketch, *view, paper, sheet, lettering);
    sketch.text({paper.axis, bottom + k_below + k_note_size}, drawing.title, k_note_size,
                Anchor::middle);
    drawing.height = bottom + k_below + 2 * k_note_size;
    return drawing;
}

} // namespace job
