// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Days as people give them: ISO 8601, `2026-12-24`, in every locale. As texts they sort by date.
#pragma once

#include <string>

namespace cli {

// Where the user is.
[[nodiscard]] std::string today();

// Throws error::BadData for what is no day of the calendar.
[[nodiscard]] std::string read_day(const std::string& text);

} // namespace cli
