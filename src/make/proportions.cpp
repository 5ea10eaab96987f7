// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/proportions.hpp"

#include <algorithm>

#include "length/grid.hpp"
#include "length/print.hpp"
#include "make/spec_dimensions.hpp"

namespace make {

using length::as_mm;
using length::MaybeRange;

namespace {

double middle_mm(const length::Range& range) {
    return as_mm(middle(range));
}

double mm_or_none(const std::optional<Dimension>& dimension) {
    return dimension && dimension->limits ? middle_mm(*dimension->limits) : 0;
}

// The middle of the limits, else the usual size; says whether it had to.
double mm_or_usual(const MaybeRange& limits, double usual, bool& exact) {
    if (limits)
        return middle_mm(*limits);
    exact = false;
    return usual;
}

void add_shank(const Piece& piece, const Spec& spec, Proportions& p) {
    const auto known = shank_as_known(piece);
    p.shank_dia = mm_or_usual(known, p.nose_dia / 2, p.exact);
    const auto usual = usual_shank_length(known ? middle(*known) : piece.pilot.lo / 2);
    p.shank_length = mm_or_usual(spec.shank_length.limits, as_mm(usual), p.exact);
    p.shank_chamfer = mm_or_none(spec.shank_chamfer);
    if (const auto& undercut = spec.undercut) {
        p.undercut_width = middle_mm(*undercut->width.limits);
        p.undercut_depth = middle_mm(*undercut->depth.limits);
        p.undercut_radius = middle_mm(*undercut->radius.limits);
        p.face_depth = mm_or_none(undercut->face_depth);
        p.face_height = as_mm(undercut->face_height);
    }
    p.corner_radius = mm_or_none(spec.corner_radius);
    p.flat_depth = mm_or_none(spec.flat_depth);
    if (spec.flat_at && spec.flat_at->limits) {
        p.flat_at = mm_or_none(spec.flat_at);
        p.flat_length = mm_or_none(spec.flat_length);
    }
}

} // namespace

double Proportions::largest_dia() const {
    return std::max({nose_dia, shank_dia, nose_dia_now});
}

Proportions proportions_of(const Piece& piece, const Spec& spec) {
    Proportions p;
    p.nose_dia = middle_mm(piece.pilot);
    p.nose_length = mm_or_usual(spec.pilot_length.limits, p.nose_dia, p.exact);
    p.nose_chamfer = spec.nose_chamfer.limits ? middle_mm(*spec.nose_chamfer.limits) : 0;
    p.nose_chamfer = std::min(p.nose_chamfer, p.nose_dia / 4);
    if (piece.kind == PieceKind::sleeve) {
        const auto owned = piece.owned ? trade::range_of(piece.owned->pilot_dia) : MaybeRange();
        p.bore = mm_or_usual(spec.sleeve_bore && spec.sleeve_bore->limits ? spec.sleeve_bore->limits
                                                                          : owned,
                             p.nose_dia * 0.6, p.exact);
    } else {
        add_shank(piece, spec, p);
    }
    if (piece.kind == PieceKind::turn_down && piece.owned && piece.owned->pilot_dia)
        p.nose_dia_now = middle_mm(piece.owned->pilot_dia->range);
    return p;
}

} // namespace make
