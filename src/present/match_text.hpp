// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The report of a match for a person: the best answer in words, the others in a table, then what
// is missing. Fits 80 columns and, for the best and a few others, one screen.
#pragma once

#include <string>

#include "match/answer.hpp"
#include "present/style.hpp"

namespace present {

struct MatchLayout {
    length::Unit unit = length::Unit::inch;
    Style style;
    std::size_t width = 80;
    bool every_other = false; // all the other answers rather than the first few
    bool reasons = false;     // every rule of the best answer
    bool pairs = false;       // the answers are pairs, not bodies
};

[[nodiscard]] std::string match_text(const match::Report& report, const trade::Screw& screw,
                                     const MatchLayout& layout);

} // namespace present
