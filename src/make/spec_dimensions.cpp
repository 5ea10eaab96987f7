// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/spec_dimensions.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "length/grid.hpp"
#include "match/say.hpp"

namespace make {

using length::Length;
using length::MaybeRange;
using length::Range;
using length::sixty_fourths;
using length::thousandths;
using length::Unit;
using match::say;

namespace {

constexpr auto k_common = "common practice";
constexpr Length k_length_tolerance = thousandths(10);     // lengths of shank and nose
constexpr Length k_least_shank_length = sixty_fourths(12); // less holds nothing: measure again
constexpr Length k_eighth = sixty_fourths(8);
constexpr Length k_below_eighth = sixty_fourths(7); // a 1/8 shank may measure under it

// A dimension that is the same on every piece of its size.
Dimension usual(const char* name, Length least, Length most, Unit unit) {
    return {name, inward(Range{least, most}, coarse_step(unit)), {}, k_common};
}

Dimension suiting(const char* name, std::string how) {
    return {name, std::nullopt, std::move(how), k_common};
}

MaybeRange hull_of_bores(const std::vector<trade::Body>& bodies) {
    MaybeRange hull;
    for (const auto& body : bodies) {
        if (!body.bore)
            continue;
        const auto& bore = body.bore->range;
        hull = hull ? Range{std::min(hull->lo, bore.lo), std::max(hull->hi, bore.hi)} : bore;
    }
    return hull;
}

// `(bore .186 to .188 in)`, after a space; nothing where no bore was measured.
std::string bores_as_known(const Piece& piece, Unit unit) {
    const auto bores = hull_of_bores(piece.bodies);
    if (!bores)
        return {};
    return fmt::format(" ({} {})", piece.bodies.size() > 1 ? "bores" : "bore", say(*bores, unit));
}

// Of a kind that stays as it is on an owned pilot.
Dimension as_it_is(const char* name, const trade::MaybeDimension& known) {
    return {name, trade::range_of(known), known ? "" : "as it is", "the owned pilot"};
}

Dimension new_pilot_length(const Piece& piece, Unit unit) {
    const Length step = in_unit(unit, sixty_fourths(2), length::micrometres(500));
    const Length tolerance = in_unit(unit, k_length_tolerance, length::micrometres(250));
    const Length nominal = round_up(piece.pilot.hi, step);
    const Length least = std::max(nominal - tolerance, round_up(piece.pilot.hi / 2, step / 32));
    return {"pilot length", Range{least, nominal + tolerance}, {}, k_common};
}

Dimension length_of_sleeve(const Piece& piece, Unit unit) {
    if (!piece.owned || !piece.owned->pilot_length)
        return suiting("pilot length",
                       "as long as the pilot in it, or up to " +
                           say(in_unit(unit, k_length_tolerance, length::micrometres(250)), unit) +
                           " shorter");
    const auto& pilot = piece.owned->pilot_length->range;
    const Range limits{std::max(pilot.lo - k_length_tolerance, pilot.lo / 2), pilot.lo};
    return {"pilot length", inward(limits, coarse_step(unit)), {}, k_common};
}

} // namespace

std::string thirty_second(Unit unit) {
    return unit == Unit::inch ? "1/32 in" : "0.8 mm";
}

std::string in_bodies(const Piece& piece) {
    std::string text = piece.bodies.size() == 1 ? "body" : "bodies";
    for (std::size_t i = 0; i < piece.bodies.size(); ++i) {
        const bool last = i + 1 == piece.bodies.size();
        text += i == 0 ? " " : last ? " and " : ", ";
        text += std::to_string(piece.bodies[i].number);
    }
    return piece.bodies.empty() ? "its body" : text;
}

MaybeRange shank_as_known(const Piece& piece) {
    if (piece.shank)
        return piece.shank;
    if (piece.owned && piece.owned->shank_dia)
        return piece.owned->shank_dia->range;
    return hull_of_bores(piece.bodies);
}

Form form_of(const Piece& piece) {
    const auto shank = shank_as_known(piece);
    if (!shank)
        return Form::shoulder;
    if (piece.pilot.lo - shank->hi >= k_least_shoulder * 2)
        return Form::shoulder;
    return shank->lo - piece.pilot.hi >= k_least_shoulder * 2 ? Form::neck : Form::plain;
}

Dimension pilot_diameter(const Piece& piece, const trade::Practice& practice, Unit unit) {
    const auto under = say(Range{practice.pilot_under_least, practice.pilot_under_most}, unit);
    const bool metric =
        std::any_of(piece.serves.begin(), piece.serves.end(), [](const Served& served) {
            return served.drill && served.drill->kind == trade::DrillKind::metric;
        });
    return {"pilot diameter",
            inward(piece.pilot, fine_step(unit)),
            {},
            "the drills or holes it runs in, " + under + " under where all of them allow it" +
                (metric ? " (practice table); e8 of ISO 286-2 under a metric drill"
                        : " (practice table)")};
}

Dimension pilot_length(const Piece& piece, Unit unit) {
    switch (piece.kind) {
    case PieceKind::pilot:
        break;
    case PieceKind::sleeve:
        return length_of_sleeve(piece, unit);
    case PieceKind::turn_down:
        return as_it_is("pilot length",
                        piece.owned ? piece.owned->pilot_length : trade::MaybeDimension());
    }
    return new_pilot_length(piece, unit);
}

Dimension shank_diameter(const Piece& piece, const trade::Practice& practice, Unit unit) {
    if (piece.kind != PieceKind::pilot)
        return as_it_is("shank diameter",
                        piece.owned ? piece.owned->shank_dia : trade::MaybeDimension());
    if (piece.shank) {
        const auto slip = say(Range{practice.slip_least, practice.slip_most}, unit);
        return {"shank diameter",
                inward(*piece.shank, fine_step(unit)),
                {},
                "the bore of " + in_bodies(piece) + " less a slip of " + slip +
                    " (practice table)"};
    }
    return suiting("shank diameter", fmt::format("to slip in {}{}, try {}before parting off",
                                                 in_bodies(piece), bores_as_known(piece, unit),
                                                 piece.bodies.size() > 1 ? "in each " : ""));
}

Dimension shank_length(const Piece& piece, Unit unit) {
    if (piece.kind != PieceKind::pilot)
        return as_it_is("shank length",
                        piece.owned ? piece.owned->shank_length : trade::MaybeDimension());
    const auto off = thirty_second(unit);
    const auto how = fmt::format("put a pin in the bore of {}, measure the depth from the mouth "
                                 "and take off {}{}",
                                 in_bodies(piece), off,
                                 piece.bodies.size() > 1 ? "; the least of them counts" : "");
    MaybeRange depth;
    for (const auto& body : piece.bodies) {
        if (!body.bore_depth)
            return suiting("shank length", how);
        if (!depth || body.bore_depth->range.lo < depth->lo)
            depth = body.bore_depth->range;
    }
    const Length step = in_unit(unit, thousandths(5), length::micrometres(100));
    const Length tolerance = in_unit(unit, k_length_tolerance, length::micrometres(250));
    if (!depth || depth->lo - sixty_fourths(2) < k_least_shank_length)
        return suiting("shank length", how);
    const Length most = round_down(depth->lo - sixty_fourths(2), step);
    return {"shank length",
            Range{most - tolerance, most},
            {},
            "the least bore depth less " + off + " (common practice)"};
}

Length usual_shank_length(Length shank_dia) {
    if (shank_dia < sixty_fourths(7))
        return sixty_fourths(32);
    if (shank_dia < sixty_fourths(10))
        return sixty_fourths(40);
    if (shank_dia < sixty_fourths(14))
        return sixty_fourths(48);
    return shank_dia < sixty_fourths(22) ? sixty_fourths(64) : sixty_fourths(80);
}

Dimension corner_radius(Unit unit) {
    return usual("corner radius", thousandths(10), thousandths(15), unit);
}

Dimension nose_chamfer(const Piece& piece, Unit unit) {
    const bool small = piece.pilot.lo < k_eighth;
    return usual("nose chamfer", thousandths(small ? 10 : 20), thousandths(small ? 15 : 30), unit);
}

Dimension shank_chamfer(Length shank_dia, Unit unit) {
    const bool small = shank_dia < k_below_eighth;
    return usual("shank chamfer", thousandths(small ? 5 : 10), thousandths(small ? 10 : 20), unit);
}

Dimension runout(Unit unit) {
    const Length most = in_unit(unit, thousandths(1), length::micrometres(20));
    return {"runout", Range{Length(), most}, {}, k_common};
}

Dimension squareness(Unit unit) {
    const Length most = in_unit(unit, length::inches_e5(50), length::micrometres(10));
    return {"squareness of the shoulder", Range{Length(), most}, {}, k_common};
}

Dimension sleeve_bore(const Piece& piece, Unit unit) {
    const auto how =
        fmt::format("measure pilot {}, then bore {} over it", piece.owned ? piece.owned->number : 0,
                    say(Range{k_sleeve_slide_least, k_sleeve_slide_most}, unit));
    if (!piece.owned || !piece.owned->pilot_dia)
        return suiting("sleeve bore", how);
    const auto& pilot = piece.owned->pilot_dia->range;
    const Range limits{pilot.hi + k_sleeve_slide_least, pilot.lo + k_sleeve_slide_most};
    if (limits.hi - limits.lo < length::inches_e5(50))
        return suiting("sleeve bore", how);
    return {"sleeve bore", inward(limits, fine_step(unit)), {}, k_common};
}

} // namespace make
