// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the tests of the reference tables share: the tables, and finding one row in them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "length/length.hpp"
#include "store/reference.hpp"

namespace tables {

[[nodiscard]] const store::Reference& reference();

// Every size that has a row somewhere, with its system and diameter as the tables have them.
[[nodiscard]] std::vector<trade::ScrewSize> sizes();

// The one row, or the test fails by exception.
[[nodiscard]] trade::Head head(std::string_view series, std::string_view size);
[[nodiscard]] trade::Clearance clearance(std::string_view system, std::string_view size);
[[nodiscard]] trade::Counterbore counterbore(std::string_view rule, std::string_view size);
[[nodiscard]] trade::Washer washer(std::string_view series, std::string_view size);
[[nodiscard]] trade::TapDrill tap_drill(std::string_view size, std::string_view pitch);
[[nodiscard]] trade::Drill drill(std::string_view name);

[[nodiscard]] length::Length in(std::string_view text);
[[nodiscard]] length::Length mm(std::string_view text);

} // namespace tables
