// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Which state of a row is the right one: the table's or the history's.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "store/recover.hpp"
#include "store/salvage.hpp"

namespace store {

// The rows of the kept tables `tables` as they should be, by table and key. The history is believed
// where its newest entry about a row fits its sum and no later entry is lost; else the table, if
// the row is there; else the history still. Differences are told in `recovered`.
[[nodiscard]] std::map<RowName, std::string> choose_rows(SQLite::Database& damaged,
                                                         const std::vector<std::string>& tables,
                                                         const SalvagedHistory& history,
                                                         Recovered& recovered);

} // namespace store
