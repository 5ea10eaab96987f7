// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/notes.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "length/print.hpp"
#include "make/spec_dimensions.hpp"
#include "make/spec_words.hpp"

namespace make {

using drawing::limits_text;

namespace {

std::string capitalized(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

// `.008 to .011`, in the other unit after it if asked for.
std::string limits_of(const Dimension& dimension, const Lettering& lettering) {
    auto words = length::to_text(*dimension.limits, lettering.unit);
    if (lettering.both_units)
        words += " " + limits_stack(*dimension.limits, lettering).back();
    return words;
}

std::string undercut_note(const Undercut& undercut, const Lettering& lettering) {
    auto note =
        fmt::format("{}: {} wide, {} deep, R {}, running out at 15°", undercut.name,
                    limits_of(undercut.width, lettering), limits_of(undercut.depth, lettering),
                    limits_of(undercut.radius, lettering));
    if (undercut.face_depth)
        note += fmt::format("; into the shoulder {}", limits_of(*undercut.face_depth, lettering));
    return note + ".";
}

// What the frames are read by.
std::string standards(length::Unit unit) {
    return unit == length::Unit::inch ? "Read by ASME Y14.5." : "Read by ISO 129 and 1101.";
}

std::string runout_note(const Piece& piece, const Spec& spec, const Lettering& lettering) {
    const auto most =
        fmt::format("{} TIR", length::with_unit(spec.runout.limits->hi, lettering.unit));
    switch (piece.kind) {
    case PieceKind::pilot:
        break;
    case PieceKind::sleeve:
        return "Outside to the pilot's shank within " + most +
               ": finish the outside with the sleeve fixed on the pilot, held by its shank.";
    case PieceKind::turn_down:
        return "Nose to shank within " + most + ": chuck by the shank, indicate true.";
    }
    return "Nose to shank within " + most + ": both diameters in one chucking.";
}

} // namespace

Notes::Notes(const Piece& piece, const Spec& spec, const Lettering& lettering)
    : lettering_(lettering) {
    add_to_suit(spec);
    if (piece.kind == PieceKind::pilot && piece.shank)
        lines_.push_back("Shank to slip in " + in_bodies(piece) + ": try " +
                         (piece.bodies.size() > 1 ? "each" : "it") + " before " +
                         (spec.centres.empty() ? "parting off." : "it leaves the grinder."));
    if (spec.undercut)
        lines_.push_back(undercut_note(*spec.undercut, lettering));
    if (spec.flat_at && spec.flat_at->limits && spec.flat_at->limits->hi == length::Length())
        lines_.emplace_back("The flat runs out at the free end of the shank.");
    if (piece.kind == PieceKind::turn_down) {
        lines_.emplace_back("Shank, flat and length stay as they are.");
        if (piece.owned && piece.owned->pilot_dia)
            lines_.push_back("Broken line: the nose as it is, Ø " +
                             limits_text(piece.owned->pilot_dia->range, lettering.unit) + ".");
    }
    if (piece.kind == PieceKind::sleeve)
        lines_.push_back(fmt::format("Fixed on pilot {} with retaining compound or soft solder.",
                                     piece.owned ? piece.owned->number : 0));
    lines_.push_back(runout_note(piece, spec, lettering));
    if (closer_than_turned(piece, lettering.unit))
        lines_.emplace_back("The nose's limits are closer than a lathe holds: grind or lap it.");
    if (!spec.centres.empty())
        lines_.push_back(spec.centres + ".");
    lines_.push_back("Finish " + spec.finish + ". Remove all burrs. " + standards(lettering.unit));
}

void Notes::add_to_suit(const Spec& spec) {
    for (const auto* dimension : dimensions_of(spec)) {
        if (dimension->limits || dimension->to_suit.empty() || dimension->to_suit == "as it is")
            continue;
        names_.push_back(dimension->name);
        lines_.push_back(capitalized(dimension->name) + ": " + dimension->to_suit + ".");
    }
}

std::size_t Notes::number_of(const Dimension& dimension) const {
    const auto found = std::find(names_.begin(), names_.end(), dimension.name);
    return found == names_.end() ? 0 : static_cast<std::size_t>(found - names_.begin()) + 1;
}

Stack Notes::words(const Dimension& dimension, std::string_view before,
                   std::string_view after) const {
    if (dimension.limits)
        return limits_stack(*dimension.limits, lettering_, before, after);
    if (const auto number = number_of(dimension))
        return {fmt::format("{}{}to suit, note {}", before, before == "Ø" ? " " : "", number)};
    return {fmt::format("{}{}", before, dimension.to_suit)};
}

} // namespace make
