// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/record/berths.hpp"

#include <iterator>

#include "store/tools.hpp"

namespace cli::record {

namespace {

// `; near it: 40, 42`.
template <class Bodies>
std::string bodies_near(const Bodies& bodies, std::int64_t number) {
    const auto above = bodies.upper_bound(number);
    std::string text;
    if (above != bodies.begin())
        text = std::to_string(std::prev(above)->first);
    if (above != bodies.end())
        text += (text.empty() ? "" : ", ") + std::to_string(above->first);
    return text.empty() ? text : "; near it: " + text;
}

} // namespace

Berths::Berths(const store::File& file) {
    for (const trade::Body& body : store::bodies(file))
        bodies_[body.number] = body.retired                  ? Kind::retired
                               : trade::may_take_pilot(body) ? Kind::takes_pilots
                                                             : Kind::takes_none;
    for (const trade::Pilot& pilot : store::pilots(file))
        if (pilot.in_body)
            holding_[*pilot.in_body] = pilot.number;
}

std::optional<Problem> Berths::take(const PilotRecord& pilot) {
    if (!pilot.in_body)
        return std::nullopt;
    const std::int64_t number = *pilot.in_body;
    const auto refused = [number](const std::string& what, const std::string& meant) {
        return Problem{"in_body", what, std::to_string(number), meant};
    };
    const auto body = bodies_.find(number);
    if (body == bodies_.end())
        return refused("no body has this number",
                       "enter the body before its pilot" + bodies_near(bodies_, number));
    if (body->second == Kind::retired)
        return refused("this body is retired", "unretire it first, or leave in_body empty");
    if (body->second == Kind::takes_none)
        return refused("this body takes no removable pilot", "see its pilot_kind");
    const auto [held, free] = holding_.try_emplace(number, pilot.number);
    if (free)
        return std::nullopt;
    return refused(held->second == 0
                       ? "this body already holds another pilot"
                       : "this body already holds pilot " + std::to_string(held->second),
                   "one pilot a body; leave in_body empty for the others");
}

} // namespace cli::record
