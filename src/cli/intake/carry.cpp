// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/intake/carry.hpp"

#include <algorithm>

namespace cli::intake {

namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

// Where the digits at the end begin.
std::size_t number_at(const std::string& text) {
    std::size_t at = text.size();
    while (at > 0 && is_digit(text[at - 1]))
        --at;
    return at;
}

} // namespace

std::string next_place(const std::string& place) {
    std::string next = place;
    std::size_t at = place.size();
    while (at > number_at(place)) {
        --at;
        if (next[at] != '9') {
            ++next[at];
            return next;
        }
        next[at] = '0';
    }
    if (at < place.size())
        next.insert(at, 1, '1');
    return next;
}

std::string said_place(const std::string& said, const std::string& before) {
    const bool number = std::all_of(said.begin(), said.end(), is_digit);
    return number ? before.substr(0, number_at(before)) + said : said;
}

std::string how_key(const std::string& column, const Size& size, bool metric) {
    const std::size_t coarse = metric ? 1 : 3; // decimal places that calipers give at most
    if (size.drill)
        return column + " drill";
    std::string key = column + (metric ? " mm" : "");
    if (!size.limits.empty() || size.value.rfind("go ", 0) == 0)
        return key + " limits";
    if (size.fraction || (size.places == 0 && !metric))
        return key + " whole";
    return key + (size.places <= coarse ? " coarse" : " fine");
}

} // namespace cli::intake
