// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The order of work.
#include <fmt/format.h>

#include "drawing/lettering.hpp"
#include "length/grid.hpp"
#include "make/spec_dimensions.hpp"
#include "make/spec_words.hpp"
#include "match/say.hpp"

namespace make {

using drawing::limits_text;
using length::Length;
using length::Range;
using length::Unit;
using match::say;

namespace {

using Lines = std::vector<std::string>;

std::string number_of(const Piece& piece) {
    return piece.owned ? std::to_string(piece.owned->number) : std::string("?");
}

std::string limits_or(const Dimension& dimension, Unit unit) {
    return dimension.limits ? "to " + limits_text(*dimension.limits, unit) : dimension.to_suit;
}

// Left on by roughing.
std::string roughing(Unit unit) {
    return say(in_unit(unit, k_grind_most, length::micrometres(250)), unit);
}

std::string recording(const Piece& piece) {
    if (piece.kind == PieceKind::turn_down)
        return "Measure the nose and record it: it stays pilot " + number_of(piece) + ".";
    return fmt::format("Measure the made sizes and record them (add pilot --from-list {}), then "
                       "paint or engrave the number.",
                       piece.item);
}

// `before`: parting off, or taking it off the centres.
std::string shank_step(const Piece& piece, const Spec& spec, std::string_view before, Unit unit) {
    const auto bodies = in_bodies(piece);
    if (!spec.shank_dia.limits)
        return fmt::format("Fit the shank to {}: stop the spindle and try often before {}, until "
                           "it goes on by hand, without shake.",
                           bodies, before);
    return fmt::format("Finish the shank {}. Stop the spindle and try {} before {}: it goes on by "
                       "hand, without shake.",
                       limits_or(spec.shank_dia, unit), bodies, before);
}

std::string flat_step(const Spec& spec) {
    if (spec.flat_at->limits)
        return "File or mill the flat to size; no burr may stand above the round, or it locks in "
               "the bore.";
    return "The flat is marked out: " + spec.flat_at->to_suit +
           ". No burr may stand above the round.";
}

std::string nose_step(const Piece& piece, const Spec& spec, Unit unit) {
    const auto close = closer_than_turned(piece, unit)
                           ? ". The limits are closer than a lathe holds: grind, or lap the last "
                             "of it, micrometer in hand"
                           : "";
    return fmt::format("Finish the nose {} in the same chucking and polish{}; chamfer the outer "
                       "end.",
                       limits_or(spec.pilot_dia, unit), close);
}

void add_corner(const Spec& spec, Lines& steps) {
    if (spec.form == Form::shoulder)
        steps.push_back(fmt::format("Turn the undercut at the shoulder ({}), then face the "
                                    "shoulder square.",
                                    spec.undercut->name));
    else if (spec.form == Form::neck)
        steps.emplace_back("Leave the small radius in the corner of the nose; no undercut.");
}

// With a shoulder the shank is at the outer end: the body can then be tried on it. A neck goes
// through the bore, so its nose is at the outer end.
std::string chucking(const Spec& spec) {
    return fmt::format("Bar in the chuck or a collet, long enough to turn nose and shank in one "
                       "chucking, the {} at the outer end; face it.",
                       spec.form == Form::shoulder ? "shank" : "nose");
}

Lines soft_steps(const Piece& piece, const Spec& spec, Unit unit) {
    Lines steps{chucking(spec), "Rough both diameters about " + roughing(unit) + " over size."};
    add_corner(spec, steps);
    steps.push_back(shank_step(piece, spec, "parting off", unit));
    steps.push_back(nose_step(piece, spec, unit));
    steps.emplace_back("Part off; reverse on the finished diameter in a collet or soft jaws, face "
                       "to length, chamfer.");
    if (spec.flat_at)
        steps.push_back(flat_step(spec));
    steps.push_back(recording(piece));
    return steps;
}

// A flat whose place is known is cut while the steel is soft; one to be marked out waits until the
// ground shank goes in the body.
Lines hardened_steps(const Piece& piece, const Spec& spec, Unit unit) {
    const auto allowance = say(in_unit(unit, k_grind_least, length::micrometres(130)), unit);
    const bool marked_out = spec.flat_at && !spec.flat_at->limits;
    Lines steps{chucking(spec), fmt::format("Turn both diameters {} to {} over their limits.",
                                            allowance, roughing(unit))};
    add_corner(spec, steps);
    steps.push_back("Part off, face both ends to length, chamfer. " + spec.centres + ".");
    if (spec.flat_at && !marked_out)
        steps.emplace_back("Mill the flat, deeper by half of what is left on the shank to grind; "
                           "take off all burrs.");
    steps.push_back("Harden and draw: " + spec.treatment);
    steps.emplace_back("Clean the scale off and polish the centres.");
    steps.push_back(shank_step(piece, spec, "it comes off the grinder for good", unit));
    steps.push_back(fmt::format("In the same setting grind the nose {} and touch the shoulder "
                                "square.",
                                limits_or(spec.pilot_dia, unit)));
    if (marked_out)
        steps.push_back("Grind the flat: " + spec.flat_at->to_suit + ".");
    steps.push_back(recording(piece));
    return steps;
}

Lines sleeve_steps(const Piece& piece, const Spec& spec, Unit unit) {
    return {"Bar in the chuck; drill and bore or ream " + limits_or(*spec.sleeve_bore, unit) +
                ": it slides on pilot " + number_of(piece) + " by hand.",
            "Turn the outside about " + roughing(unit) + " over size, face, part off to length.",
            "Clean both of oil, fix the sleeve on pilot " + number_of(piece) +
                " with retaining compound or soft solder, and let it set or cool.",
            "Chuck by the pilot's shank, indicate it true, finish the outside " +
                limits_or(spec.pilot_dia, unit) + ", polish and chamfer the nose.",
            recording(piece)};
}

Lines turn_down_steps(const Piece& piece, const Spec& spec, Unit unit) {
    return {"Try the nose of pilot " + number_of(piece) +
                " with a fine file: a file that skates shows hard steel, which is ground, not "
                "turned.",
            "Chuck by the shank, padded or in a collet, and indicate it true within " +
                say(in_unit(unit, length::inches_e5(50), length::micrometres(10)), unit) + ".",
            "Turn the nose with light cuts " + limits_or(spec.pilot_dia, unit) +
                ", polish, and renew the chamfer.",
            "Leave shank and flat as they are.", recording(piece)};
}

} // namespace

std::vector<std::string> steps_of(const Piece& piece, const Spec& spec, const Treatment& treatment,
                                  Unit unit) {
    switch (piece.kind) {
    case PieceKind::pilot:
        break;
    case PieceKind::sleeve:
        return sleeve_steps(piece, spec, unit);
    case PieceKind::turn_down:
        return turn_down_steps(piece, spec, unit);
    }
    return is_hardened(piece, treatment) ? hardened_steps(piece, spec, unit)
                                         : soft_steps(piece, spec, unit);
}

} // namespace make
