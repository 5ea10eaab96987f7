// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Which rules apply to what, and the rule about what is in hand.
#include "oracle/rules.hpp"

#include "oracle/verdicts.hpp"

namespace oracle {

namespace {

bool at_hand(const trade::Body& body) {
    return !body.retired && !body.loan;
}

const trade::Body* body_that_holds(const Context& context, const trade::Pilot& pilot) {
    for (const trade::Body& body : context.bodies) {
        if (pilot.in_body == body.number) {
            return &body;
        }
    }
    return nullptr;
}

// Only a pilot held by a set screw, or in a way that nobody recorded, needs a flat.
bool room_is_asked(const Context& context) {
    return context.question.thick || context.question.blind;
}

Judged not_in_hand(const Context& context) {
    return failed({context.shop.practice.closest_share, 1000});
}

} // namespace

Judged in_hand(const Context& context, const Triple& triple) {
    const trade::Body& body = *triple.body;
    if (!at_hand(body) || body.condition == trade::Condition::broken) {
        return not_in_hand(context);
    }
    if (triple.pilot == nullptr) {
        return passed();
    }
    const trade::Pilot& pilot = *triple.pilot;
    if (pilot.retired || pilot.loan || pilot.condition == trade::Condition::broken) {
        return not_in_hand(context);
    }
    const trade::Body* holder = body_that_holds(context, pilot);
    return holder != nullptr && !at_hand(*holder) ? not_in_hand(context) : passed();
}

std::vector<Ruling> rulings(const Context& context, const Triple& triple) {
    std::vector<Ruling> all;
    const bool hole = triple.hole.range.has_value();
    all.push_back({"head in the counterbore", head_in_the_counterbore(context, triple)});
    all.push_back({"pilot in the hole", pilot_in_the_hole(context, triple)});
    if (hole) {
        all.push_back({"drill", drill(context, triple)});
    }
    if (triple.pilot != nullptr) {
        all.push_back({"pilot shank in the bore", pilot_shank_in_the_bore(context, triple)});
        if (!holds_otherwise(*triple.body)) {
            all.push_back({"set screw on the flat", set_screw_on_the_flat(context, triple)});
        }
        if (hole) {
            all.push_back({"teeth reach the hole", teeth_reach_the_hole(context, triple)});
        }
    }
    all.push_back({"depth", depth(context, triple)});
    if (room_is_asked(context)) {
        all.push_back(
            {"pilot has room and guidance", pilot_has_room_and_guidance(context, triple)});
    }
    all.push_back({"in hand", in_hand(context, triple)});
    if (context.question.machine) {
        all.push_back({"shank in the spindle", shank_in_the_spindle(context, triple)});
    }
    return all;
}

std::vector<Ruling> rulings_without_pilot(const Context& context, const Triple& triple) {
    std::vector<Ruling> all;
    all.push_back({"head in the counterbore", head_in_the_counterbore(context, triple)});
    if (triple.hole.range) {
        all.push_back({"drill", drill(context, triple)});
        all.push_back({"teeth reach the hole", teeth_reach_the_hole(context, triple)});
    }
    all.push_back({"depth", depth(context, triple)});
    if (room_is_asked(context)) {
        all.push_back(
            {"pilot has room and guidance", pilot_has_room_and_guidance(context, triple)});
    }
    all.push_back({"in hand", in_hand(context, triple)});
    if (context.question.machine) {
        all.push_back({"shank in the spindle", shank_in_the_spindle(context, triple)});
    }
    return all;
}

} // namespace oracle
