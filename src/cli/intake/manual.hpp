// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What `help` prints while tools are entered.
#pragma once

#include <string_view>

namespace cli::intake {

[[nodiscard]] std::string_view manual();

} // namespace cli::intake
