// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A long house list out of the tables.
#pragma once

#include <vector>

#include "store/lists.hpp"
#include "trade/tables.hpp"

namespace speed {

inline constexpr std::size_t k_house_screws = 300;

// So many screws, evenly through the tables, every fifth with a hole given.
[[nodiscard]] std::vector<store::HouseScrew> house_list(const trade::Tables& tables);

} // namespace speed
