// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The set screw that holds a pilot, and the key that turns it.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "trade/tables.hpp"

namespace trade {

// The row of a set screw as recorded (`#8-32`, `M5`); none for an empty text or a size without a
// row. Throws error::BadData for what is no size.
[[nodiscard]] std::optional<SetScrew> find_set_screw(std::string_view recorded,
                                                     const std::vector<SetScrew>& rows);

} // namespace trade
