// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Whether a tool was made for the screw: by its marking, or by the sizes of the published ones.
#pragma once

#include "oracle/triple.hpp"

namespace oracle {

[[nodiscard]] bool made_for_screw(const Context& context, const Triple& triple);

} // namespace oracle
