// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "make/drawing_parts.hpp"

namespace make {

namespace {

// Millimetres of paper.
constexpr double k_most_dia = 26;
constexpr double k_section_width = 72; // with its dimension
constexpr double k_over = 9;           // from the top of the row to the circle, for an arrow
constexpr double k_dimension_off = 6;
constexpr double k_hatch_pitch = 2;
constexpr double k_gap = 3;

double degrees(double radians) {
    return radians * 180 / std::numbers::pi;
}

// Lines at 45 degrees inside the circle and under the flat at height `flat_y`.
void hatch(Sketch& sketch, Point centre, double radius, double flat_y) {
    const double slant = std::numbers::sqrt2 / 2;
    const double step = k_hatch_pitch * std::numbers::sqrt2;
    // A line is where x + y, from the centre, is `c`; it runs up to the right.
    for (double c = -radius / slant + step / 2; c < radius / slant; c += step) {
        const double half = std::sqrt(std::max(0.0, radius * radius - c * c / 2));
        Point low{c / 2 - half * slant, c / 2 + half * slant};
        Point high{c / 2 + half * slant, c / 2 - half * slant};
        if (low.y <= flat_y)
            continue;
        if (high.y < flat_y)
            high = {c - flat_y, flat_y};
        sketch.line({centre.x + low.x, centre.y + low.y}, {centre.x + high.x, centre.y + high.y},
                    Pen::thin);
    }
}

// Returns where it ends.
double draw_section(Sketch& sketch, const Subject& subject, double top) {
    const auto& s = subject.sizes;
    const auto scale = fitting_scale(0, 1, s.shank_dia, k_most_dia);
    const double radius = s.shank_dia / 2 * scale.factor;
    const Point centre{k_margin + k_gap + k_most_dia / 2, top + k_over + radius};
    const double flat_y = -(radius - s.flat_depth * scale.factor); // from the centre
    const double half_chord = std::sqrt(std::max(0.0, radius * radius - flat_y * flat_y));
    const double corner = degrees(std::atan2(flat_y, half_chord)); // right end of the flat

    sketch.arc(centre, radius, corner, 180 - corner, Pen::outline);
    sketch.arc(centre, radius, 180 - corner, 360 + corner, Pen::phantom);
    sketch.line({centre.x - half_chord, centre.y + flat_y},
                {centre.x + half_chord, centre.y + flat_y}, Pen::outline);
    hatch(sketch, centre, radius, flat_y);
    const double across = radius + k_gap;
    sketch.line({centre.x - across, centre.y}, {centre.x + across, centre.y}, Pen::centre);
    sketch.line({centre.x, centre.y - across}, {centre.x, centre.y + across}, Pen::centre);

    const double x = centre.x + radius + k_dimension_off;
    sketch.upright({x, centre.y - radius, centre.y + flat_y, centre.x + half_chord, Side::right},
                   subject.notes.words(*subject.spec.flat_depth));
    const double caption = centre.y + across + k_gap + k_note_size;
    sketch.text({k_margin + k_gap, caption}, "Section A-A, " + scale.name, k_note_size);
    return caption;
}

double draw_notes(Sketch& sketch, const Notes& notes, double left, double top) {
    const double indent = 5;
    const double pitch = k_note_size * k_line_pitch;
    double y = top + pitch;
    sketch.text({left, y}, "Notes", k_note_size, Anchor::start, true);
    int number = 0;
    for (const auto& note : notes.lines()) {
        bool first = true;
        for (const auto& line :
             wrap(note, k_note_size, k_drawing_width - k_margin - left - indent)) {
            y += pitch;
            if (first)
                sketch.text({left, y}, fmt::format("{}", ++number), k_note_size);
            first = false;
            sketch.text({left + indent, y}, line, k_note_size);
        }
    }
    return y + k_note_size;
}

} // namespace

double draw_section_and_notes(Sketch& sketch, const Subject& subject, double top) {
    if (!subject.spec.flat_depth || subject.sizes.flat_depth <= 0)
        return draw_notes(sketch, subject.notes, k_margin, top);
    const double section = draw_section(sketch, subject, top);
    const double notes = draw_notes(sketch, subject.notes, k_margin + k_section_width, top);
    return std::max(section, notes);
}

} // namespace make
