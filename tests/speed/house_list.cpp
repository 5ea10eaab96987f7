// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "speed/house_list.hpp"

#include <set>
#include <string>

#include "error/error.hpp"
#include "trade/screw.hpp"

namespace speed {

namespace {

// Every size, pitch and standing series whose words are understood.
std::vector<std::string> listed(const trade::Tables& tables) {
    std::set<std::string> withdrawn;
    for (const auto& series : tables.series())
        if (series.withdrawn)
            withdrawn.insert(series.name);
    std::vector<std::string> names;
    std::set<std::string> seen;
    for (const auto& head : tables.every_head()) {
        if (withdrawn.count(head.series) != 0)
            continue;
        for (const auto& pitch : head.pitches) {
            const bool metric = head.size.system == trade::SizeSystem::metric;
            const std::string name =
                head.size.text + (metric ? "x" : "-") + pitch + " " + head.form + " " + head.series;
            try {
                if (trade::resolve_screw(name, "", tables, {}).normal && seen.insert(name).second)
                    names.push_back(name);
            } catch (const error::Error&) {
                continue; // not said so
            }
        }
    }
    return names;
}

} // namespace

std::vector<store::HouseScrew> house_list(const trade::Tables& tables) {
    const auto names = listed(tables);
    std::vector<store::HouseScrew> house;
    for (std::size_t i = 0; i < k_house_screws && i < names.size(); ++i) {
        const std::size_t at = i * names.size() / std::min(k_house_screws, names.size());
        house.push_back({names[at], i % 5 == 0 ? "normal" : "", ""});
    }
    return house;
}

} // namespace speed
