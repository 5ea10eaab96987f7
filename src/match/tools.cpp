// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/tools.hpp"

#include <algorithm>

namespace match {

namespace {

template <typename Tool>
const Tool* find(const std::vector<Tool>& tools, std::int64_t number) {
    const auto it = std::lower_bound(
        tools.begin(), tools.end(), number,
        [](const Tool& tool, std::int64_t wanted) { return tool.number < wanted; });
    return it != tools.end() && it->number == number ? &*it : nullptr;
}

} // namespace

const trade::Body* Tools::body(std::int64_t number) const {
    return find(bodies, number);
}

const trade::Pilot* Tools::pilot(std::int64_t number) const {
    return find(pilots, number);
}

const trade::BodyFacts& Tools::facts(const trade::Body& body) const {
    return body_facts[static_cast<std::size_t>(&body - bodies.data())];
}

const trade::PilotFacts& Tools::facts(const trade::Pilot& pilot) const {
    return pilot_facts[static_cast<std::size_t>(&pilot - pilots.data())];
}

Records Tools::records(const Triple& triple) const {
    Records records{body(triple.body->number), nullptr, nullptr};
    if (triple.pilot) {
        records.pilot = pilot(triple.pilot->number);
        records.home = body(triple.pilot->in_body);
    }
    return records;
}

Tools make_tools(std::vector<trade::Body> bodies, std::vector<trade::Pilot> pilots,
                 const std::vector<trade::Trial>& trials) {
    Tools tools{std::move(bodies), std::move(pilots), {}, {}, {}};
    for (const auto& body : tools.bodies)
        tools.body_facts.push_back(trade::facts_of(body));
    for (const auto& pilot : tools.pilots)
        tools.pilot_facts.push_back(
            trade::facts_of(pilot, pilot.in_body ? tools.body(*pilot.in_body) : nullptr));
    for (const auto& trial : trials)
        tools.tried[{trial.pilot, trial.body}] = trial.how;
    return tools;
}

Tools load_tools(const trade::Rack& rack) {
    return make_tools(rack.bodies(), rack.pilots(), rack.trials());
}

} // namespace match
