// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Tools in hand that may be the same as this one: of its kind, with every size that both are known
// by the same within its limits.
#pragma once

#include <vector>

#include "cli/tool.hpp"

namespace cli::intake {

// By number. None for a tool whose cutting diameter (of a pilot: pilot and shank diameter) is not
// known.
[[nodiscard]] std::vector<Tool> alike(const Tool& tool, const store::File& file);

} // namespace cli::intake
