// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The make-list: for the house screws that nothing on hand serves, the least to make.
#pragma once

#include <string>
#include <vector>

#include "make/piece.hpp"
#include "match/question.hpp"

namespace make {

struct Wish {
    std::string screw;        // as on the house list
    match::Question question; // with the hole that the house list asks for
};

struct Settle {
    std::string screw;
    match::Answer answer; // measure first: what to measure or try
};

struct CannotMeet {
    std::string screw;
    match::Wanted wanted; // the tool to look for
    std::optional<match::Answer> nearest;
};

struct Options {
    bool sleeves = false;
    bool turn_down = false;
};

struct MakeList {
    std::vector<std::string> met; // ready or after work already
    std::vector<Settle> settle_first;
    std::vector<Piece> pieces;
    std::vector<CannotMeet> cannot;
    bool proven = true; // fewer pieces cannot do
    int bound = 0;      // at least so many are needed
};

// Order: wishes keep theirs; pieces by shank, then pilot diameter.
[[nodiscard]] MakeList make_list(const std::vector<Wish>& wishes, const match::Shop& shop,
                                 const trade::Rack& rack, length::Unit unit,
                                 const Options& options);

} // namespace make
