// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Reads the few spellings that the generator and the cases write.
#include "oracle/set_screw.hpp"

namespace oracle {

namespace {

std::int64_t whole_number(std::string_view text) {
    std::int64_t value = 0;
    for (const char c : text) {
        value = value * 10 + (c - '0');
    }
    return value;
}

} // namespace

std::optional<length::Length> major_diameter(std::string_view set_screw) {
    if (set_screw.empty()) {
        return std::nullopt;
    }
    const std::string_view size = set_screw.substr(0, set_screw.find('-'));
    if (size.front() == '#') {
        return length::thousandths(60 + 13 * whole_number(size.substr(1)));
    }
    if (size.front() == 'M') {
        return length::millimetres(whole_number(size.substr(1)));
    }
    const std::size_t slash = size.find('/');
    const std::int64_t above = whole_number(size.substr(0, slash));
    const std::int64_t below = whole_number(size.substr(slash + 1));
    return length::sixty_fourths(above * 64 / below);
}

} // namespace oracle
