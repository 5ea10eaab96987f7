// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Limits, all common practice, no source: a pilot .02 mm under its drill or more, and no more than
// .010 in (.012 over 1/2 in, .015 over 1 in); a hole of 85 % of the head or less; a shank that goes
// in its bore with .0025 in or less.
#include "toolmaker.hpp"

#include <algorithm>

using length::Length;
using length::MaybeRange;
using length::Range;
using match::AnswerKind;
using trade::Tried;

namespace published {

namespace {

bool is_named(const Said& said) {
    return said.answer.kind == AnswerKind::ready || said.answer.kind == AnswerKind::after_work;
}

bool is_ready(const Said& said) {
    return said.answer.kind == AnswerKind::ready;
}

bool slid(const Said& said) {
    return said.tried == Tried::slides || said.tried == Tried::slides_and_holds ||
           said.tried == Tried::binds;
}

MaybeRange pilot_dia(const Said& said) {
    return trade::range_of(said.pilot ? said.pilot->pilot_dia : said.body.pilot_dia);
}

MaybeRange pilot_length(const Said& said) {
    return trade::range_of(said.pilot ? said.pilot->pilot_length : said.body.pilot_length);
}

// The head or the washer under it, whichever is larger.
Range seat_of(const match::Question& question) {
    Range seat = *question.screw.head_dia;
    if (question.washer) {
        seat.lo = std::max(seat.lo, question.washer->outside_dia.lo);
        seat.hi = std::max(seat.hi, question.washer->outside_dia.hi);
    }
    return seat;
}

// What is relied on of the hole: the drill's own size, or the reamed hole.
Range relied_on(const match::Answer& answer) {
    return answer.drill ? length::exactly(answer.drill->diameter) : *answer.hole;
}

Length most_under(Length hole) {
    if (hole <= length::thousandths(500))
        return length::thousandths(10);
    return length::thousandths(hole <= length::thousandths(1000) ? 12 : 15);
}

std::string of_drill(const Said& said) {
    const auto& answer = said.answer;
    if (!answer.drill)
        return {};
    const Length drill = answer.drill->diameter;
    if (drill < said.question.screw.screw_dia->hi)
        return "the drill is under the screw";
    if (answer.kind == AnswerKind::closest)
        return {};
    if (answer.pilot_dia && answer.pilot_dia->lo >= drill)
        return "the pilot is not under the drill";
    if (answer.pilot_to_make && answer.pilot_to_make->hi >= drill)
        return "the pilot to make is not under the drill";
    if (said.body.bore && said.body.bore->range.lo > drill)
        return "the bore is over the drill";
    return {};
}

template <typename Tool>
std::string of_tool(const Said& said, const Tool& tool) {
    if (tool.retired || tool.loan || tool.condition == trade::Condition::broken)
        return "a tool that is not in hand";
    const bool wants_work = tool.condition > trade::Condition::fair || !tool.work.empty();
    return is_ready(said) && wants_work ? "a tool that wants work is ready" : "";
}

std::string of_tools(const Said& said) {
    if (said.answer.kind == AnswerKind::closest)
        return {};
    auto against = of_tool(said, said.body);
    if (against.empty() && said.pilot)
        against = of_tool(said, *said.pilot);
    if (against.empty() && is_named(said) && is_ready(said) != said.answer.work.empty())
        against = "ready with work to do, or after none";
    return against;
}

// The shank slides in the bore, and the set screw finds the flat.
std::string of_holding(const Said& said, Dice& dice) {
    const auto& pilot = *said.pilot;
    if (said.tried && !slid(said))
        return "a pilot that was tried and did not hold";
    if (is_ready(said) && said.tried == Tried::binds)
        return "a pilot that binds is ready";
    if (!said.tried) {
        if (!said.body.bore || !pilot.shank_dia)
            return "nobody knows how the pilot fits the bore";
        const Length slip =
            dice.within(said.body.bore->range) - dice.within(pilot.shank_dia->range);
        if (slip <= Length() || slip > length::inches_e5(250))
            return "the shank is not a sliding fit";
    }
    if (!is_ready(said) || said.tried == Tried::slides_and_holds)
        return pilot.has_flat == false && is_ready(said) ? "no flat" : "";
    if (!pilot.flat_at || !said.body.set_screw_at)
        return "nobody knows whether the set screw finds the flat";
    // A #8 screw is .164 in; its point is half of that, common practice.
    const Length axis = pilot.shank_length->range.lo - said.body.set_screw_at->range.lo;
    const Length half = length::thousandths(41);
    const Length flat = pilot.flat_at->range.lo;
    const bool found = axis - half >= flat && axis + half <= flat + pilot.flat_length->range.lo;
    return found ? "" : "the set screw misses the flat";
}

// The pilot runs in the hole with the screw's own body through it, and the head goes down: the
// cutter sits off by the pilot's play at most, and the screw may be pushed after it by its own.
std::string of_fit(const Said& said, Dice& dice) {
    const auto& screw = said.question.screw;
    const Range relied = relied_on(said.answer);
    const Length drill = dice.within(relied);
    const Length hole = dice.within(*said.answer.hole);
    const Length pilot = dice.within(*pilot_dia(said));
    const Length body = dice.within(*screw.screw_dia);
    const Length cut = dice.within(said.body.cut_dia->range);
    const Length seat = dice.within(seat_of(said.question));
    if (drill - pilot < Length::from_nm(20'000))
        return "the pilot is as large as its hole";
    if (drill - pilot > most_under(relied.hi))
        return "the pilot does not locate";
    if (body > hole)
        return "the screw does not go through";
    if (cut - seat <= (hole - pilot) - (hole - body)) // both sides twice the radius
        return "the head does not go down";
    if (hole.nm() * 100 > seat.nm() * 85)
        return "no seat is left";
    if (said.pilot && said.body.bore && dice.within(said.body.bore->range) > drill)
        return "the teeth leave a ring";
    return {};
}

// Under a hexagon only the face is cleaned up, 1/16 in deep.
std::string of_depth(const Said& said, Dice& dice) {
    const auto& question = said.question;
    const auto& body = said.body;
    const bool hex = question.screw.hex;
    if (!hex && body.kind != trade::BodyKind::counterbore && body.kind != trade::BodyKind::unknown)
        return "a spotfacer for a sunk head";
    Length deep = hex ? length::sixty_fourths(4) : dice.within(*question.screw.head_height);
    if (!hex && question.washer)
        deep = deep + dice.within(*question.washer->thickness);
    if (body.reach && dice.within(body.reach->range) < deep)
        return "it does not reach deep enough";
    if (!hex && !body.reach && dice.within(body.cut_dia->range) < deep)
        return "a short tool is taken to reach";
    const auto nose = pilot_length(said);
    if (question.thick && dice.within(*question.thick) <= deep)
        return "the part is cut through";
    if (question.thick && nose && dice.within(*nose) * 2 < dice.within(*pilot_dia(said)))
        return "the teeth touch before the pilot guides";
    if (question.blind && !nose)
        return "nobody knows whether the pilot has room";
    if (question.blind && dice.within(*question.blind) - deep < dice.within(*nose))
        return "the pilot has no room";
    return {};
}

std::string of_the_whole(const Said& said, Dice& dice) {
    if (!said.body.cut_dia || !pilot_dia(said) || !said.answer.hole)
        return "named on a size that nobody knows";
    std::string against;
    for (int i = 0; i < 12 && against.empty(); ++i) {
        against = of_fit(said, dice);
        if (against.empty())
            against = of_depth(said, dice);
        if (against.empty() && said.pilot)
            against = of_holding(said, dice);
    }
    return against;
}

} // namespace

std::string objection(const Said& said, Dice& dice) {
    auto against = of_drill(said);
    if (against.empty())
        against = of_tools(said);
    if (against.empty() && is_named(said))
        against = of_the_whole(said, dice);
    return against;
}

} // namespace published
