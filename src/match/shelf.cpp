// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/shelf.hpp"

#include "trade/text.hpp"

namespace match {

using trade::BodyFacts;
using trade::PilotKind;

namespace {

std::size_t place_of(PilotKind kind) {
    return static_cast<std::size_t>(kind);
}

auto cutter_of(const std::vector<BodyFacts>& facts) {
    return [&facts](std::uint32_t at) { return facts[at].cut_dia; };
}
auto pilot_of(const std::vector<BodyFacts>& facts) {
    return [&facts](std::uint32_t at) { return facts[at].pilot_dia; };
}
auto diameter_of(const std::vector<trade::PilotFacts>& facts) {
    return [&facts](std::uint32_t at) { return facts[at].pilot_dia; };
}

} // namespace

Shelf::Shelf(const trade::Rack& rack, trade::Detail detail) : RackView(rack), detail_(detail) {
    for (const auto kind :
         {PilotKind::integral, PilotKind::removable, PilotKind::none, PilotKind::unknown})
        rack.by_cutter(kind, {}, detail, [&](const BodyFacts& body) {
            bodies_[place_of(kind)].facts.push_back(body);
        });
    rack.pilots_in({}, detail,
                   [this](const trade::PilotFacts& pilot) { pilots_.push_back(pilot); });
    put_in_order();
}

Shelf::Shelf(const trade::Rack& rack, const std::string& set)
    : RackView(rack), detail_(trade::Detail::all) {
    const auto tools = load_tools(rack);
    const auto wanted = trade::folded(set);
    for (const auto& body : tools.bodies)
        if (trade::folded(body.set) == wanted)
            bodies_[place_of(body.pilot_kind)].facts.push_back(tools.facts(body));
    for (const auto& pilot : tools.pilots)
        if (trade::folded(pilot.set) == wanted)
            pilots_.push_back(tools.facts(pilot));
    put_in_order();
}

void Shelf::put_in_order() {
    for (auto& bodies : bodies_)
        bodies.by_cutter.index(bodies.facts.size(), cutter_of(bodies.facts));
    const auto& integral = bodies_[place_of(PilotKind::integral)].facts;
    integral_by_pilot_.index(integral.size(), pilot_of(integral));
    pilots_by_size_.index(pilots_.size(), diameter_of(pilots_));
}

void Shelf::by_cutter(PilotKind kind, const trade::Window& window, trade::Detail detail,
                      const trade::SeeBody& see) const {
    if (!holds(detail))
        return RackView::by_cutter(kind, window, detail, see);
    const auto& bodies = bodies_[place_of(kind)];
    bodies.by_cutter.each(window, cutter_of(bodies.facts),
                          [&](std::uint32_t at) { see(bodies.facts[at]); });
}

void Shelf::by_pilot(const trade::Window& window, trade::Detail detail,
                     const trade::SeeBody& see) const {
    if (!holds(detail))
        return RackView::by_pilot(window, detail, see);
    const auto& integral = bodies_[place_of(PilotKind::integral)].facts;
    integral_by_pilot_.each(window, pilot_of(integral),
                            [&](std::uint32_t at) { see(integral[at]); });
}

void Shelf::pilots_in(const trade::Window& window, trade::Detail detail,
                      const trade::SeePilot& see) const {
    if (!holds(detail))
        return RackView::pilots_in(window, detail, see);
    pilots_by_size_.each(window, diameter_of(pilots_), [&](std::uint32_t at) { see(pilots_[at]); });
}

RackFor::RackFor(const trade::Rack& rack, std::size_t questions) : rack_(rack) {
    if (questions >= k_many_questions)
        shelf_ = std::make_unique<Shelf>(rack, trade::Detail::usual);
}

} // namespace match
