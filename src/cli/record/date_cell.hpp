// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Sizes that a spreadsheet turned into dates: it takes 1/4 for the fourth of January (or the first
// of April), 10-24 for the 24th of October and 1/64 for January 1964, and saves `4-Jan`, `24-Oct`
// or `Jan-64`.
#pragma once

#include <string>
#include <string_view>

namespace cli::record {

enum class SizeKind { length, screw };

// What a cell that is a date was before, most likely first: `1/4`, `10-24 or 10/24`. Empty when the
// cell is no date. Where nothing sensible gives the date, all that would give it.
[[nodiscard]] std::string size_before_date(std::string_view cell, SizeKind kind);

// Throws error::BadData if the cell is a date.
void refuse_date(std::string_view cell, SizeKind kind);

} // namespace cli::record
