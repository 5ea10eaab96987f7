// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The bars that the shop has to turn pilots from.
#pragma once

#include <vector>

#include "cli/context.hpp"

namespace cli {

// Diameters, ascending: the shop's own list, or the usual ones while that is empty.
[[nodiscard]] std::vector<length::Length> bars_of(Context& context);

} // namespace cli
