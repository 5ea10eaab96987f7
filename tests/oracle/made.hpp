// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Whether a tool was made for the screw: by its marking, or by the sizes of the published ones.
#pragma once

#include "oracle/triple.hpp"

namespace oracle {

enum class Made { by_marking, by_sizes, by_cutter_alone, not_so }; // for the screw: the first two
[[nodiscard]] Made how_made(const Context& context, const Triple& triple);
[[nodiscard]] bool made_for_screw(const Context& context, const Triple& triple);

} // namespace oracle
