// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/trials.hpp"

#include <algorithm>
#include <tuple>

namespace match {

Trials::Trials(std::vector<trade::Trial> trials) : trials_(std::move(trials)) {
    std::sort(trials_.begin(), trials_.end(), [](const trade::Trial& a, const trade::Trial& b) {
        return std::tie(a.body, a.pilot) < std::tie(b.body, b.pilot);
    });
    std::vector<std::int64_t> bodies;
    std::vector<std::int64_t> pilots;
    for (const auto& trial : trials_) {
        bodies.push_back(trial.body);
        pilots.push_back(trial.pilot);
    }
    bodies_ = trade::NumberSet(std::move(bodies));
    pilots_ = trade::NumberSet(std::move(pilots));
}

std::span<const trade::Trial> Trials::in_body(std::int64_t body) const {
    if (!bodies_.may_have(body))
        return {};
    const auto first = std::lower_bound(
        trials_.begin(), trials_.end(), body,
        [](const trade::Trial& trial, std::int64_t wanted) { return trial.body < wanted; });
    auto last = first;
    while (last != trials_.end() && last->body == body)
        ++last;
    return {first, last};
}

std::optional<trade::Tried> how_tried(std::span<const trade::Trial> in_body, std::int64_t pilot) {
    for (const auto& trial : in_body)
        if (trial.pilot == pilot)
            return trial.how;
    return std::nullopt;
}

} // namespace match
