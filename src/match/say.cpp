// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/say.hpp"

namespace match {

namespace {

std::string number(length::Length value, length::Unit unit) {
    return length::to_text(value, unit, unit == length::Unit::inch ? 4 : 3);
}

const char* name(length::Unit unit) {
    return unit == length::Unit::inch ? " in" : " mm";
}

} // namespace

std::string say(length::Length value, length::Unit unit) {
    return number(value, unit) + name(unit);
}

std::string say(const length::Range& range, length::Unit unit) {
    const auto lo = number(range.lo, unit);
    const auto hi = number(range.hi, unit);
    return (lo == hi ? lo : lo + " to " + hi) + name(unit);
}

std::string say(const length::MaybeRange& range, length::Unit unit) {
    return range ? say(*range, unit) : "not known";
}

} // namespace match
