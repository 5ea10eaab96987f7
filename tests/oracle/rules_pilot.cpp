// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The rules about pilot and hole: running fit, drill, slip fit, flat, room.
#include <algorithm>

#include "oracle/set_screw.hpp"
#include "oracle/sizes.hpp"
#include "oracle/verdicts.hpp"

namespace oracle {

using length::Length;
using length::Range;
using match::Verdict;

namespace {

Verdict within(const Range& have, Length least, Length most) {
    if (have.lo >= least && have.hi <= most) {
        return Verdict::pass;
    }
    return have.hi < least || have.lo > most ? Verdict::fail : Verdict::unknown;
}

Length most_clearance(const trade::Practice& practice, Length hole) {
    if (hole > length::sixty_fourths(64)) {
        return practice.running_most_over_inch;
    }
    return hole > length::sixty_fourths(32) ? practice.running_most_over_half
                                            : practice.running_most;
}

// No owned drill suits: the nearest of those that let the screw pass says how far off the pilot is.
Judged no_hole_suits(const Context& context, const length::MaybeRange& pilot_dia) {
    std::optional<Fraction> nearest;
    if (pilot_dia) {
        for (const HoleChoice& hole : holes_to_choose(context.question, context.shop)) {
            const Fraction misfit = pilot_misfit(context.shop, *judged_by(hole), *pilot_dia);
            if (!nearest || less(misfit, *nearest)) {
                nearest = misfit;
            }
        }
    }
    return failed(nearest.value_or(Fraction{}));
}

Judged slip_fit(const Context& context, const Triple& triple) {
    const length::MaybeRange bore = trade::range_of(triple.body->bore);
    const length::MaybeRange shank = trade::range_of(triple.pilot->shank_dia);
    if (!bore || !shank) {
        return unknown();
    }
    const Length least = context.shop.practice.slip_least;
    const Length most = context.shop.practice.slip_most;
    const Range clearance = *bore - *shank;
    const Length missing = clearance.hi < least ? least - clearance.hi : clearance.lo - most;
    return judged(within(clearance, least, most), share(missing, bore->lo));
}

bool shank_longer_than_bore(const Triple& triple) {
    const length::MaybeRange shank = trade::range_of(triple.pilot->shank_length);
    const length::MaybeRange bore = trade::range_of(triple.body->bore_depth);
    return shank && bore && shank->lo > bore->hi;
}

// Whether the flat lies under the whole width of the set screw's point. All from the shank's end.
Judged flat_covers_point(const Context& context, const Triple& triple) {
    const trade::Pilot& pilot = *triple.pilot;
    const std::optional<Length> major = major_diameter(triple.body->set_screw);
    if (!pilot.flat_at || !pilot.flat_length || !pilot.shank_length || !triple.body->set_screw_at ||
        !major) {
        return unknown();
    }
    const Length point = *major * context.shop.practice.set_screw_point_share / 1000;
    const Length half = point / 2;
    const Range axis = pilot.shank_length->range - triple.body->set_screw_at->range;
    const Range near_edge = pilot.flat_at->range;
    const Range far_edge = near_edge + pilot.flat_length->range;
    const Range spare_near = axis - near_edge + (-half);
    const Range spare_far = far_edge - axis + (-half);
    if (spare_near.lo >= Length() && spare_far.lo >= Length()) {
        return passed();
    }
    const bool flat_too_short = pilot.flat_length->range.hi < half * 2;
    if (spare_near.hi < Length() || spare_far.hi < Length() || flat_too_short) {
        return passed_after_work();
    }
    return unknown();
}

// The part, or the hole in it, goes on below the cut.
Judged deeper_than_cut(const Range& deep, Length cut) {
    if (deep.lo > cut) {
        return passed();
    }
    return deep.hi <= cut ? failed(share(cut - deep.hi, cut)) : unknown();
}

// One that nobody measured is taken to be as long as it is thick, where the work leaves it room.
length::MaybeRange length_in(const Range& thick, std::optional<Length> cut, const Nose& nose) {
    if (nose.length || !nose.dia || !cut || thick.lo <= *cut + nose.dia->hi) {
        return nose.length;
    }
    return nose.dia;
}

// So much of the pilot is in the hole as the part is thick and the pilot is long.
Judged guided(const Context& context, const Range& thick, const Nose& nose) {
    if (!nose.dia) {
        return unknown();
    }
    const std::int64_t part = context.shop.practice.guidance_share;
    const auto needed = [part](Length dia) { // whole nanometres: the next above
        return Length::from_nm((dia.nm() * part + 999) / 1000);
    };
    const Range need = {needed(nose.dia->lo), needed(nose.dia->hi)};
    const auto enough = [&](const Range& in_hole) {
        return judged(at_least(in_hole - need, Length()), share(need.lo - in_hole.hi, need.lo));
    };
    return both(enough(thick), nose.length ? enough(*nose.length) : unknown());
}

Judged room_below_seat(const Range& blind, Length cut, const Nose& nose) {
    if (!nose.length) {
        return unknown();
    }
    const Range below_seat = blind + (-cut);
    return judged(at_least(below_seat - *nose.length, Length()),
                  share(nose.length->lo - below_seat.hi, nose.length->lo));
}

} // namespace

Fraction pilot_misfit(const match::Shop& shop, const Range& hole, const Range& pilot_dia) {
    const Length largest = hole.hi - shop.practice.running_least;
    const Length smallest = hole.lo - most_clearance(shop.practice, hole.hi);
    return pilot_dia.lo > largest ? share(pilot_dia.lo - largest, largest)
                                  : share(smallest - pilot_dia.hi, smallest);
}

Judged pilot_in_the_hole(const Context& context, const Triple& triple) {
    const std::optional<Nose> nose = nose_of(triple);
    if (!nose) {
        return failed();
    }
    if (!triple.hole.range) {
        return no_hole_suits(context, nose->dia);
    }
    if (!nose->dia) {
        return unknown();
    }
    const trade::Practice& practice = context.shop.practice;
    const Range hole = *judged_by(triple.hole);
    const Verdict verdict =
        within(hole - *nose->dia, practice.running_least, most_clearance(practice, hole.hi));
    if (verdict == Verdict::fail) {
        return failed(pilot_misfit(context.shop, hole, *nose->dia));
    }
    const bool taken_for_integral =
        triple.pilot == nullptr && triple.body->pilot_kind == trade::PilotKind::unknown;
    return taken_for_integral ? unknown() : judged(verdict, {});
}

Judged drill(const Context& context, const Triple& triple) {
    if (context.question.hole.tapped) {
        return passed();
    }
    const length::MaybeRange screw = context.question.screw.screw_dia;
    if (!screw) {
        return unknown();
    }
    return judged(at_least(*triple.hole.range, screw->hi),
                  share(screw->hi - triple.hole.range->hi, screw->hi));
}

namespace {

// By the trial, or by the sizes.
Judged goes_in(const Context& context, const Triple& triple) {
    const std::optional<trade::Tried> how = tried(context, triple);
    if (how == trade::Tried::slides_and_holds || how == trade::Tried::slides) {
        return passed();
    }
    if (how == trade::Tried::binds) {
        return passed_after_work();
    }
    if (how) {
        return failed();
    }
    Judged fit = slip_fit(context, triple);
    if (fit.verdict == Verdict::fail && triple.pilot->in_body == triple.body->number) {
        fit = unknown();
    }
    fit.work = shank_longer_than_bore(triple);
    return fit;
}

} // namespace

// A flat is there for a set screw.
bool unlike_pair(const Context& context, const Triple& triple) {
    const bool found_in_it = triple.pilot->in_body == triple.body->number;
    return takes_pilots(*triple.body) && holds_otherwise(*triple.body) &&
           triple.pilot->has_flat == true && !tried(context, triple) && !found_in_it;
}

Judged pilot_shank_in_the_bore(const Context& context, const Triple& triple) {
    const Judged fit = goes_in(context, triple);
    if (!holds_otherwise(*triple.body)) {
        return fit;
    }
    if (unlike_pair(context, triple)) {
        return failed({1, 1});
    }
    const bool holds = tried(context, triple) == trade::Tried::slides_and_holds;
    return fit.verdict == Verdict::pass && !holds ? unknown() : fit;
}

Judged set_screw_on_the_flat(const Context& context, const Triple& triple) {
    const bool seen_without_flat = triple.pilot->has_flat == false;
    if (tried(context, triple) == trade::Tried::slides_and_holds) {
        return seen_without_flat ? passed_after_work() : passed();
    }
    if (!holds_by(*triple.body)) {
        return unknown();
    }
    if (seen_without_flat) {
        return passed_after_work();
    }
    return flat_covers_point(context, triple);
}

Judged pilot_has_room_and_guidance(const Context& context, const Triple& triple) {
    const std::optional<Length> cut = depth_to_cut(context.question, context.shop);
    const std::optional<Nose> nose = nose_of(triple);
    Judged found = passed();
    if (context.question.thick) {
        const Range& thick = *context.question.thick;
        found = both(found, cut ? deeper_than_cut(thick, *cut) : unknown());
        if (nose) {
            const Nose in_hole{nose->dia, length_in(thick, cut, *nose)};
            found = both(found, guided(context, thick, in_hole));
        }
    }
    if (context.question.blind) {
        const Range& blind = *context.question.blind;
        found = both(found, cut ? deeper_than_cut(blind, *cut) : unknown());
        found = both(found, nose && cut ? room_below_seat(blind, *cut, *nose) : passed());
    }
    return found;
}

} // namespace oracle
