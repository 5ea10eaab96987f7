// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A machine's spindle, as far as a tool's shank must fit it.
#pragma once

#include <optional>
#include <string>

#include "length/range.hpp"

namespace trade {

struct Machine {
    std::string name;
    length::MaybeRange chuck; // smallest and largest straight shank its chuck takes
    std::optional<int> morse; // Morse taper of the spindle
};

} // namespace trade
