// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The rules that the body answers for: head, teeth, depth, spindle.
#include <fmt/format.h>

#include "oracle/sizes.hpp"
#include "oracle/verdicts.hpp"

namespace oracle {

using length::Length;
using length::Range;
using match::Verdict;

namespace {

// The cutter may sit off the screw's axis by the play of the pilot under the screw; a screw in its
// own thread has no play in the hole for the tap.
Length clearance_needed(const Context& context, const Triple& triple) {
    const Length least = context.shop.practice.head_clearance;
    const std::optional<Nose> nose = nose_of(triple);
    if (!nose || !nose->dia) {
        return least;
    }
    // In its own thread the screw stands where the hole does.
    if (context.question.hole.tapped) {
        return std::max(least, triple.hole.range->hi - nose->dia->lo);
    }
    const length::MaybeRange screw = context.question.screw.screw_dia;
    return screw ? std::max(least, screw->hi - nose->dia->lo) : least;
}

Judged room_for_head(const Context& context, const Triple& triple) {
    const length::MaybeRange head = what_goes_in(context.question);
    const length::MaybeRange cut = trade::range_of(triple.body->cut_dia);
    if (!head || !cut) {
        return unknown();
    }
    const Length need = clearance_needed(context, triple);
    return judged(at_least(*cut - *head, need), share(head->lo + need - cut->hi, head->lo + need));
}

Judged not_too_large(const Context& context, const Triple& triple) {
    const std::optional<Targets> target = targets(context.question, context.shop);
    const length::MaybeRange cut = trade::range_of(triple.body->cut_dia);
    if (!target || !cut || middle(*cut) <= target->limit) {
        return passed();
    }
    return failed(share(middle(*cut) - target->limit, target->limit));
}

Judged seat_left(const Context& context, const Triple& triple) {
    const length::MaybeRange head = what_goes_in(context.question);
    if (!head || !triple.hole.range) {
        return passed();
    }
    const Wide allowed = Wide(head->lo.nm()) * context.shop.practice.seat_share;
    const Wide hole = Wide(triple.hole.range->hi.nm()) * 1000;
    return hole > allowed ? failed({hole - allowed, allowed}) : passed();
}

// What the body is taken to reach; nothing where nobody can say.
length::MaybeRange reach_of(const trade::Body& body) {
    if (body.reach) {
        return body.reach->range;
    }
    if (body.kind == trade::BodyKind::counterbore) {
        return trade::range_of(body.cut_dia);
    }
    return std::nullopt;
}

bool sinks_heads(trade::BodyKind kind) {
    return kind == trade::BodyKind::counterbore || kind == trade::BodyKind::unknown;
}

Judged straight_shank(const trade::Machine& machine, const length::MaybeRange& shank) {
    if (!machine.chuck || !shank) {
        return unknown();
    }
    if (shank->lo >= machine.chuck->lo && shank->hi <= machine.chuck->hi) {
        return passed();
    }
    const bool never = shank->hi < machine.chuck->lo || shank->lo > machine.chuck->hi;
    return never ? failed() : unknown();
}

} // namespace

Judged head_in_the_counterbore(const Context& context, const Triple& triple) {
    return both(room_for_head(context, triple),
                both(not_too_large(context, triple), seat_left(context, triple)));
}

Judged teeth_reach_the_hole(const Context& context, const Triple& triple) {
    const length::MaybeRange bore = trade::range_of(triple.body->bore);
    if (!bore) {
        return unknown();
    }
    // A drill still to be chosen is not relied on to cut over.
    const bool chosen = context.question.hole.kind == match::HoleKind::chosen;
    const Range hole = chosen && triple.hole.drill ? *judged_by(triple.hole) : *triple.hole.range;
    return judged(at_least(hole - *bore, Length()), share(bore->lo - hole.hi, bore->lo));
}

Judged depth(const Context& context, const Triple& triple) {
    if (!context.question.screw.hex && !sinks_heads(triple.body->kind)) {
        Judged wrong = failed();
        wrong.shortfall = {context.shop.practice.closest_share, 1000};
        return wrong;
    }
    if (context.question.screw.hex && !triple.body->reach) {
        return passed();
    }
    const std::optional<Length> need = depth_to_cut(context.question, context.shop);
    const length::MaybeRange reach = reach_of(*triple.body);
    if (!need || !reach) {
        return unknown();
    }
    return judged(at_least(*reach, *need), share(*need - reach->hi, *need));
}

Judged shank_in_the_spindle(const Context& context, const Triple& triple) {
    const trade::Machine& machine = *context.question.machine;
    const std::string& kind = triple.body->shank_kind;
    if (kind.empty() || kind == "straight") {
        return straight_shank(machine, trade::range_of(triple.body->shank_dia));
    }
    if (kind.starts_with("Morse ") && machine.morse) {
        return kind == fmt::format("Morse {}", *machine.morse) ? passed() : failed();
    }
    return unknown();
}

} // namespace oracle
