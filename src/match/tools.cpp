// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/tools.hpp"

#include <algorithm>

namespace match {

const trade::Body* Tools::body(std::int64_t number) const {
    const auto it = std::lower_bound(
        bodies.begin(), bodies.end(), number,
        [](const trade::Body& body, std::int64_t wanted) { return body.number < wanted; });
    return it != bodies.end() && it->number == number ? &*it : nullptr;
}

Tools load_tools(const trade::Rack& rack) {
    Tools tools{rack.bodies(), rack.pilots(), {}};
    for (const auto& trial : rack.trials())
        tools.tried[{trial.pilot, trial.body}] = trial.how;
    return tools;
}

} // namespace match
