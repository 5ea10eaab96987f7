// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tolerances of ISO 286-2 that counterbores, their pilots and reamed holes are made to, by
// nominal size. Rows over 80 mm are from memory.
#pragma once

#include "length/range.hpp"

namespace trade {

// A cutter to z9: how far its upper limit stands over the nominal.
[[nodiscard]] length::Length z9_over(length::Length nominal);

// A pilot to e8: its limits, both under the nominal.
[[nodiscard]] length::Range e8_limits(length::Length nominal);

// A hole to H8: its limits, from the nominal up.
[[nodiscard]] length::Range h8_limits(length::Length nominal);

} // namespace trade
