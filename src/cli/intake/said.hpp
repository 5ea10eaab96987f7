// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a line says, cell by cell, before anything is taken over.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/intake/items.hpp"

namespace cli::intake {

// A cell of `marking` that stands for the cutting diameter as it is written.
inline constexpr std::string_view k_as_cut = "=";

struct Said {
    std::string column;
    std::string cell; // empty: said to be unknown
    std::size_t at = 0;
    bool for_all = false;
    const Size* size = nullptr; // of a size, in the items
};

[[nodiscard]] bool is_size_of_pilot(std::string_view column); // only of an integral pilot
[[nodiscard]] bool is_of_bore(std::string_view column);       // only of a removable one's body

// The column that says how this one is known, empty where there is none.
[[nodiscard]] std::string how_column(std::string_view column, bool pilot);

// Whether the line is about a loose pilot: it begins with that word, or says what only a pilot has.
[[nodiscard]] bool tells_of_pilot(const std::vector<Item>& items, bool pilots_come);

// Throws LineError for what the tool does not have, what is said twice, what cannot hold for all.
[[nodiscard]] std::vector<Said> what_is_said(const std::vector<Item>& items, bool pilot);

} // namespace cli::intake
