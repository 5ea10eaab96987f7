// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "length/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <numeric>

namespace length {

namespace {

constexpr int k_inch_decimals = 5;
constexpr int k_mm_decimals = 6;
constexpr int k_least_inch_decimals = 3;

std::int64_t power_of_ten(int exponent) {
    std::int64_t power = 1;
    for (int i = 0; i < exponent; ++i)
        power *= 10;
    return power;
}

// Digits after the point, without zeros at the end beyond the first `least`.
std::string decimals_text(std::int64_t part, int decimals, int least) {
    auto text = decimals == 0 ? std::string() : fmt::format("{:0{}}", part, decimals);
    while (text.size() > static_cast<std::size_t>(least) && text.back() == '0')
        text.pop_back();
    return text;
}

} // namespace

std::string to_text(Length value, Unit unit, int decimals) {
    const bool inch = unit == Unit::inch;
    const auto places = std::clamp(decimals, 0, inch ? k_inch_decimals : k_mm_decimals);
    const auto per_unit = inch ? k_nm_per_inch : k_nm_per_mm;
    const auto scale = power_of_ten(places);
    const auto size = value.nm() < 0 ? -value.nm() : value.nm();
    const auto part = (size % per_unit * scale * 2 + per_unit) / (per_unit * 2); // half away
    const auto whole = size / per_unit + part / scale;
    const auto after =
        decimals_text(part % scale, places, inch ? std::min(places, k_least_inch_decimals) : 0);
    auto text = inch && whole == 0 && !after.empty() ? std::string() : fmt::format("{}", whole);
    if (!after.empty())
        text += "." + after;
    const bool zero = whole == 0 && part == 0;
    return value.nm() < 0 && !zero ? "-" + text : text;
}

std::string to_text(Length value, Unit unit) {
    return to_text(value, unit, unit == Unit::inch ? k_inch_decimals : k_mm_decimals);
}

std::string with_unit(Length value, Unit unit) {
    return to_text(value, unit) + (unit == Unit::inch ? " in" : " mm");
}

std::string to_text(const Range& range, Unit unit) {
    const auto lo = to_text(range.lo, unit);
    const auto hi = to_text(range.hi, unit);
    return lo == hi ? lo : lo + " to " + hi;
}

std::string as_fraction(Length value) {
    const auto step = sixty_fourths(1).nm();
    if (value.nm() <= 0 || value.nm() % step != 0)
        return {};
    const auto count = value.nm() / step;
    const auto whole = count / 64;
    const auto part = count % 64;
    if (part == 0)
        return fmt::format("{}", whole);
    const auto common = std::gcd(part, std::int64_t{64});
    const auto fraction = fmt::format("{}/{}", part / common, 64 / common);
    return whole == 0 ? fraction : fmt::format("{}-{}", whole, fraction);
}

double as_mm(Length value) {
    return static_cast<double>(value.nm()) / static_cast<double>(k_nm_per_mm);
}

} // namespace length
