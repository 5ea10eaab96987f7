// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/record/entry.hpp"

#include "cli/record/berths.hpp"
#include "store/tools.hpp"

namespace cli::record {

std::vector<Problem> problems_of(const trade::Body& body, const store::File&) {
    return contradictions(body);
}

std::vector<Problem> problems_of(const PilotRecord& pilot, const store::File& file) {
    std::vector<Problem> problems = contradictions(pilot);
    if (const auto problem = Berths(file).take(pilot))
        problems.push_back(*problem);
    return problems;
}

std::int64_t add_tool(store::Change& change, const trade::Body& body) {
    return store::add_body(change, body);
}

std::int64_t add_tool(store::Change& change, const PilotRecord& pilot) {
    const std::int64_t number = store::add_pilot(change, pilot);
    if (pilot.tried)
        store::record_trial(change, {number, *pilot.in_body, *pilot.tried});
    return number;
}

} // namespace cli::record
