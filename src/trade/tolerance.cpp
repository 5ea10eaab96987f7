// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "trade/tolerance.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

namespace trade {

using length::Length;
using length::micrometres;

namespace {

// In micrometres, for nominal sizes over the row before up to and including `most_mm`.
struct Row {
    std::int64_t most_mm;
    std::int64_t z;   // fundamental deviation of z, over
    std::int64_t e;   // fundamental deviation of e, under
    std::int64_t it8; // grade IT8
    std::int64_t it9; // grade IT9
};

constexpr std::array<Row, 15> k_rows{{
    {3, 26, 14, 14, 25},
    {6, 35, 20, 18, 30},
    {10, 42, 25, 22, 36},
    {14, 50, 32, 27, 43},
    {18, 60, 32, 27, 43},
    {24, 73, 40, 33, 52},
    {30, 88, 40, 33, 52},
    {40, 112, 50, 39, 62},
    {50, 136, 50, 39, 62},
    {65, 172, 60, 46, 74},
    {80, 210, 60, 46, 74},
    {100, 258, 72, 54, 87},
    {120, 310, 72, 54, 87},
    {140, 365, 85, 63, 100},
    {160, 415, 85, 63, 100},
}};

const Row& row_of(Length nominal) {
    const auto found = std::find_if(k_rows.begin(), k_rows.end(), [&](const Row& row) {
        return nominal <= length::millimetres(row.most_mm);
    });
    return found == k_rows.end() ? k_rows.back() : *found;
}

} // namespace

Length z9_over(Length nominal) {
    const auto& row = row_of(nominal);
    return micrometres(row.z + row.it9);
}

length::Range e8_limits(Length nominal) {
    const auto& row = row_of(nominal);
    return {nominal - micrometres(row.e + row.it8), nominal - micrometres(row.e)};
}

length::Range h8_limits(Length nominal) {
    return {nominal, nominal + micrometres(row_of(nominal).it8)};
}

} // namespace trade
