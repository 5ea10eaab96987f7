// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The title block: what it is, of what, for which bodies and screws, and what to beware of.
#include <fmt/format.h>

#include "make/drawing_parts.hpp"
#include "match/say.hpp"

namespace make {

namespace {

// Millimetres of paper.
constexpr double k_head_height = 11;
constexpr double k_label_width = 26;
constexpr double k_pad = 1.4;
constexpr std::size_t k_most_lines = 5; // of what it is for; the list has the rest

struct Cell {
    double left;
    std::string label;
    std::string words;
    bool strong = false;
};

std::string kind_words(const Piece& piece) {
    const auto number = piece.owned ? piece.owned->number : 0;
    switch (piece.kind) {
    case PieceKind::pilot:
        break;
    case PieceKind::sleeve:
        return fmt::format("Sleeve for pilot {}", number);
    case PieceKind::turn_down:
        return fmt::format("Turn down pilot {}", number);
    }
    return "Pilot";
}

std::string units_words(const Lettering& lettering) {
    const bool inch = lettering.unit == length::Unit::inch;
    return std::string(inch ? "inches" : "mm") +
           (lettering.both_units ? inch ? " [mm]" : " [inches]" : "");
}

void draw_head(Sketch& sketch, const Subject& subject, double top) {
    const auto& piece = subject.piece;
    const std::vector<Cell> cells{
        {k_frame, "Item", std::to_string(piece.item), true},
        {13, "Make", kind_words(piece), true},
        {64, "Drawing", drawing_number(piece, subject.date)},
        {90, "Date", std::string(subject.date)},
        {112, "Quantity", "1"},
        {123, "Scale", subject.scale.name + (subject.sizes.exact ? "" : ", about")},
        {143, "Limits in", units_words(subject.lettering)},
        {166, "Projection", ""}};
    for (const auto& cell : cells) {
        if (cell.left > k_frame)
            sketch.line({cell.left, top}, {cell.left, top + k_head_height}, Pen::frame);
        const double x = cell.left + k_pad;
        sketch.text({x, top + 3.2}, cell.label, k_label_size);
        sketch.text({x, top + 8.6}, cell.words, cell.strong ? 3.3 : 3, Anchor::start, cell.strong);
    }
    draw_projection(sketch, cells.back().left + k_pad * 2, top + 7.4,
                    subject.lettering.unit == length::Unit::inch ? Projection::third_angle
                                                                 : Projection::first_angle);
}

// A label and text as tall as it needs, at most so many lines. Returns where it ends.
double draw_row(Sketch& sketch, const char* label, const std::vector<std::string>& paragraphs,
                double top, std::size_t most = 100) {
    const double x = k_frame + k_label_width;
    Stack lines;
    for (const auto& paragraph : paragraphs)
        for (auto& line : wrap(paragraph, k_note_size, k_drawing_width - k_frame - k_pad - x))
            lines.push_back(std::move(line));
    if (lines.size() > most) {
        lines.resize(most - 1);
        lines.emplace_back("and more: see the list");
    }
    const double pitch = k_note_size * k_line_pitch;
    sketch.line({k_frame, top}, {k_drawing_width - k_frame, top}, Pen::frame);
    double y = top + k_pad + k_note_size * 0.8;
    sketch.text({k_frame + k_pad, y}, label, k_label_size);
    for (const auto& line : lines) {
        sketch.text({x, y}, line, k_note_size);
        y += pitch;
    }
    return y - pitch + k_note_size * 0.3 + k_pad;
}

std::vector<std::string> material_rows(const Subject& subject) {
    const auto& spec = subject.spec;
    std::vector<std::string> rows{spec.material + "."};
    if (spec.stock_dia > length::Length())
        rows[0] +=
            fmt::format(" Bar {}, cut {}.", size_text(spec.stock_dia, subject.lettering.unit),
                        size_text(spec.cut_length, subject.lettering.unit));
    rows.push_back(spec.treatment);
    return rows;
}

std::string bodies_row(const Piece& piece) {
    std::string row;
    for (const auto& body : piece.bodies) {
        row += (row.empty() ? "" : "; ") + std::to_string(body.number);
        if (!body.place.empty())
            row += " (" + body.place + ")";
    }
    return row;
}

std::string hole_words(const Served& served, length::Unit unit) {
    const auto hole = match::say(served.hole, unit);
    if (served.drill)
        return fmt::format("drill {} (hole {})", served.drill->name, hole);
    return (served.reamed ? "reamed hole " : "hole ") + hole;
}

// One line a screw and body.
std::vector<std::string> served_rows(const Subject& subject) {
    std::vector<std::string> rows;
    for (const auto& served : subject.piece.serves) {
        auto row = fmt::format("{}: {}, in body {}", served.screw,
                               hole_words(served, subject.lettering.unit), served.body);
        if (served.size)
            row += ", " + std::string(match::to_text(*served.size));
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace

double draw_title_block(Sketch& sketch, const Subject& subject, double top) {
    sketch.line({k_frame, top}, {k_drawing_width - k_frame, top}, Pen::frame);
    draw_head(sketch, subject, top);
    double y = draw_row(sketch, "Material", material_rows(subject), top + k_head_height);
    y = draw_row(sketch, "Goes in body", {bodies_row(subject.piece)}, y);
    y = draw_row(sketch, "For", served_rows(subject), y, k_most_lines);
    return draw_row(sketch, "Cautions", subject.spec.cautions, y);
}

} // namespace make
