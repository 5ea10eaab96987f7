// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/drawing.hpp"

#include <fmt/format.h>

#include "make/drawing_parts.hpp"

namespace make {

namespace {

constexpr double k_between_rows = 3;

} // namespace

std::string drawing_number(const Piece& piece, std::string_view date) {
    std::string digits(date);
    std::erase(digits, '-');
    return fmt::format("{}-{:02}", digits, piece.item);
}

Drawing draw(const Piece& piece, const Spec& spec, const Lettering& lettering,
             std::string_view date) {
    const Notes notes(piece, spec, lettering);
    const auto sizes = proportions_of(piece, spec);
    const auto scale =
        fitting_scale(sizes.length(), k_most_view_length, sizes.largest_dia(), k_most_view_dia);
    const Subject subject{piece, spec, lettering, notes, sizes, scale, date};

    Drawing drawing;
    drawing.width = k_drawing_width;
    drawing.title = fmt::format("Item {}, drawing {}", piece.item, drawing_number(piece, date));
    Sketch sketch(drawing);
    double y = draw_view(sketch, subject, k_margin);
    y = draw_section_and_notes(sketch, subject, y + k_between_rows);
    y = draw_title_block(sketch, subject, y + k_margin);
    sketch.box({k_frame, k_frame, k_drawing_width - k_frame, y}, Pen::frame);
    drawing.height = y + k_frame;
    return drawing;
}

} // namespace make
