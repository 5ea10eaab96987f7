// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/spec.hpp"

#include "length/grid.hpp"
#include "make/spec_dimensions.hpp"
#include "make/spec_words.hpp"
#include "make/stock.hpp"

namespace make {

using length::Length;
using length::Range;
using length::Unit;

namespace {

// Faced off at each end (common practice).
constexpr Length k_facing = length::sixty_fourths(2);

Length most_of(const Dimension& dimension, Length otherwise) {
    return dimension.limits ? dimension.limits->hi : otherwise;
}

// Shank, shoulder and flat of a new pilot.
void add_shank(const Piece& piece, const trade::Practice& practice, Unit unit, Spec& spec) {
    const auto known = shank_as_known(piece);
    const Range shank = known ? *known : length::exactly(piece.pilot.lo / 2);
    if (spec.form == Form::shoulder) {
        spec.undercut = undercut_for(shank, piece.pilot, unit);
        spec.squareness = squareness(unit);
    } else if (spec.form == Form::neck) {
        spec.corner_radius = corner_radius(unit);
    }
    spec.shank_chamfer = shank_chamfer(middle(shank), unit);
    if (auto flat = flat_of(piece, practice, spec.shank_length, unit)) {
        spec.flat_at = std::move(flat->at);
        spec.flat_length = std::move(flat->length);
        spec.flat_depth = std::move(flat->depth);
    }
}

void add_bar(const Piece& piece, const std::vector<Length>& bars, Unit unit, Spec& spec) {
    if (piece.kind == PieceKind::turn_down)
        return;
    const auto known = shank_as_known(piece);
    const Length shank = known ? known->hi : Length();
    const bool sleeve = piece.kind == PieceKind::sleeve;
    const auto bar = bar_for(sleeve ? piece.pilot.hi : std::max(piece.pilot.hi, shank), bars, unit);
    spec.stock_dia = bar.diameter;
    spec.bought_bar = !bar.own;
    const Length nose = most_of(spec.pilot_length, piece.pilot.hi);
    const Length rest = sleeve ? Length() : most_of(spec.shank_length, usual_shank_length(shank));
    spec.cut_length = round_up(nose + rest + k_facing * 2,
                               in_unit(unit, length::sixty_fourths(2), length::micrometres(500)));
}

} // namespace

Spec specify(const Piece& piece, const trade::Practice& practice, const std::vector<Length>& bars,
             Unit unit, const Treatment& treatment) {
    Spec spec;
    spec.form = form_of(piece);
    spec.pilot_dia = pilot_diameter(piece, practice, unit);
    spec.pilot_length = pilot_length(piece, unit);
    spec.shank_dia = shank_diameter(piece, practice, unit);
    spec.shank_length = shank_length(piece, unit);
    spec.nose_chamfer = nose_chamfer(piece, unit);
    spec.runout = runout(unit);
    if (piece.kind == PieceKind::pilot)
        add_shank(piece, practice, unit, spec);
    if (piece.kind == PieceKind::sleeve)
        spec.sleeve_bore = sleeve_bore(piece, unit);
    spec.finish = finish_of(piece, unit);
    spec.material = material_of(piece, treatment);
    spec.treatment = treatment_of(piece, treatment, unit);
    spec.treatment_source = treatment_source(piece, treatment);
    if (is_hardened(piece, treatment))
        spec.centres = centres_of(piece);
    add_bar(piece, bars, unit, spec);
    spec.steps = steps_of(piece, spec, treatment, unit);
    spec.cautions = cautions_of(piece, spec, treatment, unit);
    return spec;
}

std::vector<const Dimension*> dimensions_of(const Spec& spec) {
    std::vector<const Dimension*> dimensions{&spec.pilot_dia, &spec.pilot_length, &spec.shank_dia,
                                             &spec.shank_length};
    const auto add = [&dimensions](const std::optional<Dimension>& dimension) {
        if (dimension)
            dimensions.push_back(&*dimension);
    };
    if (spec.undercut) {
        for (const auto* of_undercut :
             {&spec.undercut->width, &spec.undercut->depth, &spec.undercut->radius})
            dimensions.push_back(of_undercut);
        add(spec.undercut->face_depth);
    }
    for (const auto* dimension : {&spec.corner_radius, &spec.shank_chamfer, &spec.flat_at,
                                  &spec.flat_length, &spec.flat_depth, &spec.sleeve_bore})
        add(*dimension);
    dimensions.push_back(&spec.nose_chamfer);
    dimensions.push_back(&spec.runout);
    add(spec.squareness);
    return dimensions;
}

} // namespace make
