// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/spec_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "drawing/lettering.hpp"
#include "length/grid.hpp"
#include "make/spec_dimensions.hpp"
#include "match/say.hpp"
#include "trade/text.hpp"

namespace make {

using drawing::limits_text;
using length::Length;
using length::Range;
using match::say;

namespace {

using Lines = std::vector<std::string>;

constexpr auto k_safety =
    "Guards on, eye protection, no gloves, loose sleeves or rings at the spindle, chuck key out; "
    "stop the spindle to gauge or try the piece; files need handles; brush chips. Learners under "
    "supervision; local rules come first.";

// Left on by roughing, and most that is left for grinding.
Length roughing(length::Unit unit) {
    return in_unit(unit, length::thousandths(10), length::micrometres(250));
}

std::string number_of(const Piece& piece) {
    return piece.owned ? std::to_string(piece.owned->number) : std::string("?");
}

std::string limits_or(const Dimension& dimension, length::Unit unit) {
    return dimension.limits ? "to " + limits_text(*dimension.limits, unit) : dimension.to_suit;
}

std::string recording(const Piece& piece) {
    if (piece.kind == PieceKind::turn_down)
        return "Measure the nose and record it: it stays pilot " + number_of(piece) + ".";
    return fmt::format("Measure the made sizes and record them (add pilot --from-list {}), then "
                       "paint or engrave the number.",
                       piece.item);
}

std::string shank_step(const Piece& piece, const Spec& spec, length::Unit unit) {
    const auto bodies = in_bodies(piece);
    if (!spec.shank_dia.limits)
        return "Fit the shank to " + bodies +
               ": stop the spindle and try often, until it goes on "
               "by hand, without shake.";
    return "Finish the shank " + limits_or(spec.shank_dia, unit) + ". Stop the spindle and try " +
           bodies + ": it goes on by hand, without shake.";
}

std::string flat_step(const Spec& spec) {
    if (spec.flat_at->limits)
        return "File or mill the flat to size; no burr may stand above the round, or it locks in "
               "the bore.";
    return "The flat is marked out: " + spec.flat_at->to_suit +
           ". No burr may stand above the round.";
}

// With a shoulder the shank is at the outer end: the body can then be tried on it. A neck goes
// through the bore, so its nose is at the outer end.
Lines pilot_steps(const Piece& piece, const Spec& spec, length::Unit unit) {
    const bool shoulder = spec.form == Form::shoulder;
    Lines steps;
    steps.push_back(fmt::format("Bar in the chuck or a collet, long enough to turn nose and shank "
                                "in one chucking, the {} at the outer end; face it.",
                                shoulder ? "shank" : "nose"));
    steps.push_back("Rough both diameters about " + say(roughing(unit), unit) + " over size.");
    if (shoulder)
        steps.emplace_back("Turn the undercut at the shoulder, then face the shoulder square.");
    else if (spec.form == Form::neck)
        steps.emplace_back("Leave the small radius in the corner of the nose; no undercut.");
    steps.push_back(shank_step(piece, spec, unit));
    steps.push_back(fmt::format("Finish the nose {} in the same chucking and polish; chamfer the "
                                "outer end.",
                                limits_or(spec.pilot_dia, unit)));
    steps.emplace_back("Part off; reverse on the finished diameter in a collet or soft jaws, face "
                       "to length, chamfer.");
    if (spec.flat_at)
        steps.push_back(flat_step(spec));
    steps.push_back(recording(piece));
    return steps;
}

Lines sleeve_steps(const Piece& piece, const Spec& spec, length::Unit unit) {
    return {"Bar in the chuck; drill and bore or ream " + limits_or(*spec.sleeve_bore, unit) +
                ": it slides on pilot " + number_of(piece) + " by hand.",
            "Turn the outside about " + say(roughing(unit), unit) +
                " over size, face, part off to length.",
            "Clean both of oil, fix the sleeve on pilot " + number_of(piece) +
                " with retaining compound or soft solder, and let it set or cool.",
            "Chuck by the pilot's shank, indicate it true, finish the outside " +
                limits_or(spec.pilot_dia, unit) + ", polish and chamfer the nose.",
            recording(piece)};
}

Lines turn_down_steps(const Piece& piece, const Spec& spec, length::Unit unit) {
    return {"Try the nose of pilot " + number_of(piece) +
                " with a fine file: a file that skates shows hard steel, which is ground, not "
                "turned.",
            "Chuck by the shank, padded or in a collet, and indicate it true within " +
                say(in_unit(unit, length::inches_e5(50), length::micrometres(10)), unit) + ".",
            "Turn the nose with light cuts " + limits_or(spec.pilot_dia, unit) +
                ", polish, and renew the chamfer.",
            "Leave shank and flat as they are.", recording(piece)};
}

std::string held_otherwise(const trade::Body& body) {
    if (!body.retention)
        return fmt::format("It is not recorded how body {} holds its pilot: look before the shank "
                           "is finished.",
                           body.number);
    switch (*body.retention) {
    case trade::Retention::set_screw:
        return {};
    case trade::Retention::threaded:
        return fmt::format("Body {} holds its pilot by a thread: cut it on the shank to suit the "
                           "body, with a plain register behind it.",
                           body.number);
    case trade::Retention::detent:
        return fmt::format("Body {} holds its pilot by a ball: turn the groove to suit the body.",
                           body.number);
    case trade::Retention::cross_pin:
        return fmt::format("Body {} holds its pilot by a cross pin: drill pilot and body together.",
                           body.number);
    case trade::Retention::sleeve:
    case trade::Retention::other:
        break;
    }
    return fmt::format("Body {} does not hold its pilot by a set screw: take the shank's form from "
                       "the body.",
                       body.number);
}

void add_edges(const Piece& piece, length::Unit unit, Lines& lines) {
    for (const auto& body : piece.bodies) {
        if (!body.cut_dia)
            continue;
        const Length edge = (body.cut_dia->range.lo - piece.pilot.hi) / 2;
        if (edge < least_edge(body.cut_dia->range.lo))
            lines.push_back(fmt::format(
                "In body {} {} cutting edge is left from nose to rim: "
                "light feed.",
                body.number, edge > Length() ? "only " + say(edge, unit) + " of" : "no"));
    }
}

void add_form(const Piece& piece, const Spec& spec, Lines& lines) {
    if (piece.kind != PieceKind::pilot || spec.form == Form::shoulder)
        return;
    lines.push_back("No shoulder seats it: set the end of the shank level with the face of the "
                    "body, never proud of the teeth, before the set screw is nipped.");
    if (weak_neck(piece))
        lines.push_back("The nose is thinner than 60 % of the shank and weak in bending: enter the "
                        "hole with care, no side load.");
}

void add_sleeve(const Piece& piece, Lines& lines) {
    if (piece.kind != PieceKind::sleeve || !piece.owned || !piece.owned->pilot_length)
        return;
    if (piece.owned->pilot_length->range.lo < piece.pilot.hi / 2)
        lines.emplace_back("The sleeve is shorter than half its diameter and guides poorly.");
}

} // namespace

Length least_edge(Length cut_dia) {
    return cut_dia > length::sixty_fourths(32) ? length::sixty_fourths(4) : length::thousandths(30);
}

bool weak_neck(const Piece& piece) {
    const auto shank = shank_as_known(piece);
    return shank && piece.pilot.hi * 10 < shank->lo * 6;
}

std::string finish_of(const Piece& piece) {
    const std::string finish = "32 microinch (0.8 micrometre) Ra";
    return finish +
           (piece.kind == PieceKind::pilot ? " on nose and shank" : " on the running diameter");
}

std::string material_of(const Piece& piece) {
    switch (piece.kind) {
    case PieceKind::pilot:
        return "Drill rod (silver steel), W1 or O1";
    case PieceKind::sleeve:
        return "Drill rod (silver steel), or bronze for soft holes";
    case PieceKind::turn_down:
        break;
    }
    if (!piece.owned)
        return "As it is";
    const auto known = trade::trimmed(piece.owned->material);
    return fmt::format("Pilot {}{}", piece.owned->number,
                       known.empty() ? "" : ", " + std::string(known));
}

std::string treatment_of(const Piece& piece, length::Unit unit) {
    const auto grind =
        say(Range{in_unit(unit, length::thousandths(5), length::micrometres(130)), roughing(unit)},
            unit);
    switch (piece.kind) {
    case PieceKind::pilot:
        break;
    case PieceKind::sleeve:
        return "Soft; harden only before it is fixed, with " + grind + " left to grind.";
    case PieceKind::turn_down:
        return "No heat treatment: it stays soft.";
    }
    return "Soft for a short run. For long service turn both diameters " + grind +
           " over, harden and draw to about 58-60 HRC, grind to the limits.";
}

std::vector<std::string> steps_of(const Piece& piece, const Spec& spec, length::Unit unit) {
    switch (piece.kind) {
    case PieceKind::pilot:
        break;
    case PieceKind::sleeve:
        return sleeve_steps(piece, spec, unit);
    case PieceKind::turn_down:
        return turn_down_steps(piece, spec, unit);
    }
    return pilot_steps(piece, spec, unit);
}

std::vector<std::string> cautions_of(const Piece& piece, const Spec& spec, length::Unit unit) {
    Lines lines;
    add_form(piece, spec, lines);
    add_edges(piece, unit, lines);
    add_sleeve(piece, lines);
    if (piece.kind == PieceKind::pilot)
        for (const auto& body : piece.bodies)
            if (auto line = held_otherwise(body); !line.empty())
                lines.push_back(std::move(line));
    if (spec.bought_bar)
        lines.push_back("No bar in the shop's list is large enough: " + say(spec.stock_dia, unit) +
                        " is needed.");
    lines.emplace_back(k_safety);
    return lines;
}

} // namespace make
