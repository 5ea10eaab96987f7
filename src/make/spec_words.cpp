// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/spec_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "length/grid.hpp"
#include "make/room.hpp"
#include "make/spec_dimensions.hpp"
#include "match/say.hpp"
#include "trade/text.hpp"

namespace make {

using length::Length;
using length::Range;
using length::Unit;
using match::say;

namespace {

using Lines = std::vector<std::string>;

constexpr auto k_safety =
    "Guards on, eye protection, no gloves, loose sleeves or rings at the spindle, chuck key out; "
    "stop the spindle to gauge or try the piece; files need handles; brush chips. Learners under "
    "supervision; local rules come first.";
constexpr auto k_heat =
    "Hot work: face shield, leather gloves and apron, nothing near that burns or melts, fume drawn "
    "off, extinguisher at hand; black steel still burns.";
constexpr auto k_grinding = "Grinding: wheel rung and guarded, eye protection, no gloves.";
constexpr auto k_fixing =
    "Retaining compound: gloves and fresh air, as its safety sheet says; it lets go, with fume, if "
    "heated. Solder: flux fume drawn off, eye protection against spatter, wash hands after.";

std::string held_otherwise(const trade::Body& body) {
    if (!body.retention || *body.retention == trade::Retention::set_screw)
        return {};
    switch (*body.retention) {
    case trade::Retention::set_screw:
        break;
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

// One line for those bodies that leave as little as the worst.
void add_edges(const Piece& piece, Unit unit, Lines& lines) {
    std::optional<Length> least;
    std::string bodies;
    for (const auto& body : piece.bodies) {
        if (!body.cut_dia)
            continue;
        const Length edge = (body.cut_dia->range.lo - piece.pilot.hi) / 2;
        if (edge >= least_edge(body.cut_dia->range.lo))
            continue;
        least = std::min(edge, least.value_or(edge));
        bodies += fmt::format("{}{}", bodies.empty() ? "" : ", ", body.number);
    }
    if (least)
        lines.push_back(
            fmt::format("In body {} {} cutting edge is left from nose to rim: light "
                        "feed.",
                        bodies, *least > Length() ? "only " + say(*least, unit) + " of" : "no"));
}

void add_retention(const Piece& piece, Lines& lines) {
    std::string unknown;
    for (const auto& body : piece.bodies) {
        if (!body.retention)
            unknown += fmt::format("{}{}", unknown.empty() ? "" : ", ", body.number);
        else if (auto line = held_otherwise(body); !line.empty())
            lines.push_back(std::move(line));
    }
    if (!unknown.empty())
        lines.push_back("It is not recorded how the pilot is held in body " + unknown +
                        ": look before the shank is finished.");
}

void add_form(const Piece& piece, const Spec& spec, Unit unit, Lines& lines) {
    if (piece.kind != PieceKind::pilot || spec.form == Form::shoulder)
        return;
    const bool neck = spec.form == Form::neck;
    lines.push_back((neck ? std::string("No shoulder seats it")
                          : "Under " + say(k_least_shoulder, unit) +
                                " of shoulder is left a side, too little to seat on") +
                    ": set the end of the shank level with the face of the body, never proud of "
                    "the teeth, before the set screw is nipped.");
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

bool is_hardened(const Piece& piece, const Treatment& treatment) {
    return treatment.hardened && piece.kind == PieceKind::pilot;
}

bool closer_than_turned(const Piece& piece, Unit unit) {
    return piece.pilot.hi - piece.pilot.lo <
           in_unit(unit, k_pilot_tolerance, length::micrometres(15));
}

std::string centres_of(const Piece& piece) {
    const auto shank = shank_as_known(piece);
    const Length thinnest = shank ? std::min(shank->lo, piece.pilot.lo) : piece.pilot.lo / 2;
    if (thinnest >= length::millimetres(6))
        return "Centres in both ends to grind on: ISO 6411 A1/2.12, left in";
    if (thinnest >= length::millimetres(3))
        return "Centres in both ends to grind on: ISO 6411 A0.5/1.06, left in";
    return "A 60 degree point on each end to grind on, stoned off last";
}

std::string finish_of(const Piece& piece, Unit unit) {
    const std::string finish = unit == Unit::inch ? "32 microinch Ra" : "Ra 0.8";
    return finish +
           (piece.kind == PieceKind::pilot ? " on nose and shank" : " on the running diameter");
}

std::string material_of(const Piece& piece, const Treatment& treatment) {
    if (piece.kind != PieceKind::turn_down) {
        std::string name(treatment.steel->name);
        name[0] = static_cast<char>(name[0] - 'a' + 'A');
        return name;
    }
    if (!piece.owned)
        return "As it is";
    const auto known = trade::trimmed(piece.owned->material);
    return fmt::format("Pilot {}{}", piece.owned->number,
                       known.empty() ? "" : ", " + std::string(known));
}

std::string treatment_of(const Piece& piece, const Treatment& treatment, Unit unit) {
    if (piece.kind == PieceKind::turn_down)
        return "No heat treatment: it stays soft.";
    if (!is_hardened(piece, treatment))
        return "Left soft, as bought: for a short run, no grinding.";
    const auto degrees = [unit](int f, int c) {
        return unit == Unit::inch ? fmt::format("{} °F ({} °C)", f, c)
                                  : fmt::format("{} °C ({} °F)", c, f);
    };
    const auto& steel = *treatment.steel;
    const auto left = say(Range{in_unit(unit, k_grind_least, length::micrometres(130)),
                                in_unit(unit, k_grind_most, length::micrometres(250))},
                          unit);
    return fmt::format("{} left on both diameters; heat to {}, soak until even, quench in {}; draw "
                       "at once at {}, an hour or more: 58 to 60 HRC. Grind to the limits.",
                       left, degrees(steel.harden_f, steel.harden_c), steel.quench,
                       degrees(steel.draw_f, steel.draw_c));
}

std::string treatment_source(const Piece& piece, const Treatment& treatment) {
    return is_hardened(piece, treatment) ? std::string(treatment.steel->source) : "common practice";
}

std::vector<std::string> cautions_of(const Piece& piece, const Spec& spec,
                                     const Treatment& treatment, Unit unit) {
    Lines lines;
    add_form(piece, spec, unit, lines);
    add_edges(piece, unit, lines);
    add_sleeve(piece, lines);
    if (piece.kind == PieceKind::pilot)
        add_retention(piece, lines);
    if (spec.bought_bar)
        lines.push_back("No bar in the shop's list is large enough: " + say(spec.stock_dia, unit) +
                        " is needed.");
    lines.emplace_back(k_safety);
    if (piece.kind == PieceKind::sleeve)
        lines.emplace_back(k_fixing);
    if (is_hardened(piece, treatment))
        for (const std::string_view line :
             {std::string_view(k_heat), treatment.steel->quench_caution,
              std::string_view(k_grinding)})
            lines.emplace_back(line);
    return lines;
}

} // namespace make
