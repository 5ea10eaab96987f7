// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/turns.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

#include "error/error.hpp"
#include "trade/text.hpp"

namespace cli {

namespace {

constexpr int k_most_turns = 100'000; // beyond any spindle that holds a counterbore
constexpr auto k_hint = "turns a minute: steps \"250, 500, 1000\" or a range \"150 to 3000\"";

int read_speed(std::string_view part, const std::string& text) {
    int speed = 0;
    const auto trimmed = trade::trimmed(part);
    const auto* end = trimmed.data() + trimmed.size();
    const auto read = std::from_chars(trimmed.data(), end, speed);
    if (read.ec != std::errc() || read.ptr != end || speed < 1 || speed > k_most_turns)
        throw error::BadData(fmt::format("speeds: not a whole number from 1 to {}: '{}' in '{}'",
                                         k_most_turns, trimmed, text),
                             k_hint);
    return speed;
}

} // namespace

void read_turns(const std::string& text, trade::Machine& machine) {
    for (const std::string_view between : {" to ", ".."}) {
        const auto at = text.find(between);
        if (at == std::string::npos)
            continue;
        const int slowest = read_speed(std::string_view(text).substr(0, at), text);
        const int fastest = read_speed(std::string_view(text).substr(at + between.size()), text);
        if (slowest >= fastest)
            throw error::BadData("speeds: the slower comes first: '" + text + "'", k_hint);
        machine.speeds = {slowest, fastest};
        machine.variable = true;
        return;
    }
    std::vector<int> steps;
    for (const std::string& part : trade::split(text, ','))
        steps.push_back(read_speed(part, text));
    std::sort(steps.begin(), steps.end());
    if (steps.empty())
        throw error::BadData("speeds: none: '" + text + "'", k_hint);
    if (const auto twice = std::adjacent_find(steps.begin(), steps.end()); twice != steps.end())
        throw error::BadData(fmt::format("speeds: {} comes twice: '{}'", *twice, text), k_hint);
    machine.speeds = steps;
    machine.variable = false;
}

std::string turns_text(const trade::Machine& machine) {
    return fmt::format("{}", fmt::join(machine.speeds, machine.variable ? " to " : ", "));
}

} // namespace cli
