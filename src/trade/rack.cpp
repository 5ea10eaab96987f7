// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A rack that can only list everything: each question goes through the list.
#include "trade/rack.hpp"

#include <algorithm>

namespace trade {

namespace {

template <typename Tool>
std::optional<Tool> find(const std::vector<Tool>& tools, std::int64_t number) {
    const auto it = std::find_if(tools.begin(), tools.end(),
                                 [&](const Tool& tool) { return tool.number == number; });
    return it == tools.end() ? std::nullopt : std::optional(*it);
}

} // namespace

std::vector<Marked> Rack::markings() const {
    std::vector<Marked> all;
    for (const auto& body : bodies())
        if (!body.marking.empty())
            all.push_back({body.marking, static_cast<std::int32_t>(body.number)});
    std::stable_sort(all.begin(), all.end(),
                     [](const Marked& a, const Marked& b) { return a.marking < b.marking; });
    return all;
}

std::optional<Body> Rack::body(std::int64_t number) const {
    return find(bodies(), number);
}

std::optional<Pilot> Rack::pilot(std::int64_t number) const {
    return find(pilots(), number);
}

void Rack::by_cutter(PilotKind kind, const Window& window, Detail, const SeeBody& see) const {
    for (const auto& body : bodies())
        if (const auto facts = facts_of(body);
            facts.pilot_kind == kind && window.takes(facts.cut_dia))
            see(facts);
}

void Rack::by_pilot(const Window& window, Detail, const SeeBody& see) const {
    for (const auto& body : bodies())
        if (const auto facts = facts_of(body);
            facts.pilot_kind == PilotKind::integral && window.takes(facts.pilot_dia))
            see(facts);
}

void Rack::pilots_in(const Window& window, Detail, const SeePilot& see) const {
    const auto all = bodies();
    for (const auto& pilot : pilots()) {
        const auto home = std::find_if(
            all.begin(), all.end(), [&](const Body& body) { return pilot.in_body == body.number; });
        if (const auto facts = facts_of(pilot, home == all.end() ? nullptr : &*home);
            window.takes(facts.pilot_dia))
            see(facts);
    }
}

} // namespace trade
