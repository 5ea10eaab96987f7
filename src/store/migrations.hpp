// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The steps that make a catalogue file and bring an older one up to date.
#pragma once

#include <string_view>
#include <vector>

namespace store {

// One file of migrations/; its number is its place in the list, counted from one, and the
// user_version of the file that it leaves.
struct Migration {
    std::string_view name; // `0001-first`
    std::string_view sql;
};

// All steps, in order.
[[nodiscard]] const std::vector<Migration>& migrations();

} // namespace store
