// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "trade/facts.hpp"

#include <charconv>

#include "trade/size.hpp"
#include "trade/text.hpp"

namespace trade {

namespace {

Limits limits_of(const MaybeDimension& dimension) {
    return dimension ? Limits(dimension->range) : Limits();
}

Limits major_of(const std::string& set_screw) {
    return set_screw.empty() ? Limits() : Limits(length::exactly(parse_set_screw(set_screw)));
}

template <typename Tool>
bool is_gone(const Tool& tool) {
    return tool.retired || tool.loan;
}

} // namespace

Shank::Shank(std::string_view recorded) {
    const auto text = folded(recorded);
    if (text.empty() || text == "straight")
        return;
    code_ = k_other;
    for (const std::string_view start : {"morse taper ", "morse ", "mt ", "mt"}) {
        if (text.compare(0, start.size(), start) != 0)
            continue;
        std::int8_t taper = 0;
        const auto end =
            std::from_chars(text.data() + start.size(), text.data() + text.size(), taper);
        if (end.ec == std::errc() && end.ptr == text.data() + text.size())
            code_ = taper < 0 ? k_other : taper;
    }
}

BodyFacts facts_of(const Body& body) {
    BodyFacts facts;
    facts.number = static_cast<std::int32_t>(body.number);
    facts.kind = body.kind;
    facts.pilot_kind = body.pilot_kind;
    facts.retention = body.retention;
    facts.condition = body.condition;
    facts.gone = is_gone(body);
    facts.work_listed = !body.work.empty();
    facts.shank = Shank(body.shank_kind);
    facts.set_screw = major_of(body.set_screw);
    facts.cut_dia = limits_of(body.cut_dia);
    facts.pilot_dia = limits_of(body.pilot_dia);
    facts.pilot_length = limits_of(body.pilot_length);
    facts.bore = limits_of(body.bore);
    facts.bore_depth = limits_of(body.bore_depth);
    facts.set_screw_at = limits_of(body.set_screw_at);
    facts.reach = limits_of(body.reach);
    facts.shank_dia = limits_of(body.shank_dia);
    return facts;
}

PilotFacts facts_of(const Pilot& pilot, const Body* home) {
    PilotFacts facts;
    facts.number = static_cast<std::int32_t>(pilot.number);
    facts.in_body = home ? static_cast<std::int32_t>(home->number) : 0;
    facts.condition = pilot.condition;
    facts.has_flat = pilot.has_flat;
    facts.gone = is_gone(pilot);
    facts.home_gone = home && is_gone(*home);
    facts.work_listed = !pilot.work.empty();
    facts.pilot_dia = limits_of(pilot.pilot_dia);
    facts.pilot_length = limits_of(pilot.pilot_length);
    facts.shank_dia = limits_of(pilot.shank_dia);
    facts.shank_length = limits_of(pilot.shank_length);
    facts.flat_at = limits_of(pilot.flat_at);
    facts.flat_length = limits_of(pilot.flat_length);
    return facts;
}

} // namespace trade
