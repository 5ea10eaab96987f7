// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/torque.hpp"

#include <array>
#include <charconv>
#include <optional>
#include <string>

#include "error/error.hpp"
#include "trade/conversion.hpp"
#include "trade/text.hpp"

namespace job {

namespace {

struct Unit {
    std::string_view name;
    double newton_metres;
};
constexpr std::array k_units{
    Unit{"ft-lb", trade::k_newton_metres_in_foot_pound},
    Unit{"in-lb", trade::k_newton_metres_in_inch_pound},
    Unit{"n m", 1},
    Unit{"nm", 1},
};

std::optional<double> positive_number(std::string_view text) {
    text = trade::trimmed(text);
    double value = 0;
    const auto end = text.data() + text.size();
    const auto result = std::from_chars(text.data(), end, value, std::chars_format::fixed);
    if (result.ec != std::errc() || result.ptr != end || !(value > 0) || value > 1e6)
        return std::nullopt;
    return value;
}

std::optional<Measure> in_unit(std::string_view numbers, double newton_metres) {
    const auto to = numbers.find(" to ");
    const auto lo = positive_number(numbers.substr(0, to));
    const auto hi = to == std::string_view::npos ? lo : positive_number(numbers.substr(to + 4));
    if (!lo || !hi || *lo > *hi)
        return std::nullopt;
    return Measure{Kind::torque, *lo * newton_metres, *hi * newton_metres};
}

} // namespace

Measure read_torque(std::string_view text) {
    const auto folded = trade::folded(text);
    for (const auto& unit : k_units) {
        if (!folded.ends_with(unit.name))
            continue;
        const auto numbers = std::string_view(folded).substr(0, folded.size() - unit.name.size());
        if (const auto torque = in_unit(numbers, unit.newton_metres))
            return *torque;
        break;
    }
    throw error::BadData("no torque: '" + std::string(text) + "'",
                         "a number with its unit: 17 ft-lb, 204 in-lb, 23 N m, 15 to 17 ft-lb");
}

} // namespace job
