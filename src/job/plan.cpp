// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/plan.hpp"

#include <map>
#include <utility>

namespace job {

namespace {

using Tool = std::pair<std::int64_t, std::optional<std::int64_t>>; // body, pilot

std::string words_of(const Tool& tool) {
    const auto body = "body " + std::to_string(tool.first);
    return tool.second ? body + ", pilot " + std::to_string(*tool.second) : body;
}

void add_line(Run& run, std::size_t line, int holes) {
    run.lines.push_back(line);
    run.holes += holes;
}

// By diameter, then by name where two drills are alike.
using DrillKey = std::pair<length::Length, std::string>;

void pull_tools(Plan& plan, const std::vector<Sheet>& sheets) {
    std::map<std::int64_t, std::string> bodies;
    std::map<std::int64_t, std::string> pilots;
    std::map<DrillKey, std::string> drills;
    for (const auto& sheet : sheets) {
        if (!sheet.usable())
            continue;
        const auto& answer = *sheet.answer;
        bodies[answer.body] = answer.place;
        if (answer.pilot)
            pilots[*answer.pilot] =
                answer.seat == match::Seat::in_this_body ? "in the body" : answer.pilot_place;
        if (answer.drill)
            drills[{answer.drill->diameter, answer.drill->name}] = {};
    }
    for (const auto& [key, place] : drills)
        plan.pull.push_back({"drill", key.second, place});
    for (const auto& [number, place] : bodies)
        plan.pull.push_back({"body", std::to_string(number), place});
    for (const auto& [number, place] : pilots)
        plan.pull.push_back({"pilot", std::to_string(number), place});
}

} // namespace

Plan plan_job(const std::vector<Sheet>& sheets) {
    Plan plan;
    std::map<DrillKey, Run> drilling;
    std::map<Tool, Run> counterboring;
    for (std::size_t line = 0; line < sheets.size(); ++line) {
        const auto& sheet = sheets[line];
        if (!sheet.usable()) {
            plan.not_ready.push_back(line);
            continue;
        }
        const auto& answer = *sheet.answer;
        const int holes = sheet.particulars.count;
        if (const auto& drill = answer.drill) {
            auto& run = drilling[{drill->diameter, drill->name}];
            run.operation = "drill";
            run.with = drill->name;
            add_line(run, line, holes);
        }
        const Tool tool{answer.body, answer.pilot};
        auto& run = counterboring[tool];
        run.operation = "counterbore";
        run.with = words_of(tool);
        add_line(run, line, holes);
    }
    for (auto& [key, run] : drilling)
        plan.runs.push_back(std::move(run));
    for (auto& [key, run] : counterboring)
        plan.runs.push_back(std::move(run));
    pull_tools(plan, sheets);
    return plan;
}

} // namespace job
