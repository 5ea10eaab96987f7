// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/record/berths.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "store/tools.hpp"

namespace cli::record {

namespace {

// `; near it: 40, 42`.
std::string bodies_near(const store::File& file, std::int64_t number) {
    const auto near = store::bodies_next_to(file, number);
    return near.empty() ? std::string() : fmt::format("; near it: {}", fmt::join(near, ", "));
}

} // namespace

std::optional<Problem> Berths::take(const PilotRecord& pilot) {
    if (!pilot.in_body)
        return std::nullopt;
    const std::int64_t number = *pilot.in_body;
    const auto refused = [number](const std::string& what, const std::string& meant) {
        return Problem{"in_body", what, std::to_string(number), meant};
    };
    const auto body = store::body(file_, number);
    if (!body)
        return refused("no body has this number",
                       "enter the body before its pilot" + bodies_near(file_, number));
    if (body->retired)
        return refused("this body is retired", "unretire it first, or leave in_body empty");
    if (!trade::may_take_pilot(*body))
        return refused("this body takes no removable pilot", "see its pilot_kind");
    const auto taken = taken_.find(number);
    const auto held = taken == taken_.end() ? store::pilot_in(file_, number) : taken->second;
    if (!held) {
        taken_[number] = pilot.number;
        return std::nullopt;
    }
    return refused(*held == 0 ? "this body already holds another pilot"
                              : fmt::format("this body already holds pilot {}", *held),
                   "one pilot a body; leave in_body empty for the others");
}

} // namespace cli::record
