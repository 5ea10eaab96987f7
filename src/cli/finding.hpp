// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a check found, in a line.
#pragma once

#include <string>

#include "store/check.hpp"

namespace cli {

// `body 12, bore: .1878 -> .1978: not as it was written`.
[[nodiscard]] std::string line_of(const store::Finding& finding);

} // namespace cli
