// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A removable pilot, as found.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "trade/dimension.hpp"
#include "trade/words.hpp"

namespace trade {

// Empty text and absent values are unknown.
struct Pilot {
    std::int64_t number = 0;
    std::string set;
    MaybeDimension pilot_dia;
    MaybeDimension pilot_length;
    std::optional<bool> fluted;
    MaybeDimension shank_dia;
    MaybeDimension shank_length;
    std::optional<bool> has_flat; // false: seen to have none (a cell `none` in flat_at)
    MaybeDimension flat_at;       // end of the shank to the near end of the flat
    MaybeDimension flat_length;
    MaybeDimension flat_depth;
    std::string material;
    std::optional<Condition> condition;
    std::vector<std::string> work;       // needed before use
    std::optional<std::int64_t> in_body; // the body it is in
    std::string place;
    std::string note;
    std::optional<std::string> retired; // why
    std::optional<std::string> loan;    // who has it

    bool operator==(const Pilot&) const = default;
};

// A person put this pilot in this body.
struct Trial {
    std::int64_t pilot = 0;
    std::int64_t body = 0;
    Tried how = Tried::slides;

    bool operator==(const Trial&) const = default;
};

} // namespace trade
