// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A machine: what its spindle takes, how fast it turns and how far it goes down.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "length/range.hpp"

namespace trade {

struct Machine {
    std::string name;
    length::MaybeRange chuck;     // smallest and largest straight shank its chuck takes
    std::optional<int> morse;     // Morse taper of the spindle
    std::vector<int> speeds = {}; // turns a minute, ascending; empty: not known
    bool variable = false;        // any speed from the first to the last
    std::optional<length::Length> travel = {}; // of the quill
};

} // namespace trade
