// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Which state of a row is the right one: the table's or the history's.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "store/recover.hpp"
#include "store/salvage.hpp"

namespace store {

// Shows every row of the kept table `table` that should be, as JSON: the states in which it was
// found, the right one first; the rows changed last come first. The history is believed where
// its newest entry about a row is sound and no later entry that may be about it is lost, and where
// it is complete; else the table, if the row is there; else a page that nothing leads to any more,
// if that holds something newer than the history; else the history still. Differences are told in
// `recovered`.
using SeeStates =
    std::function<void(const std::string& key, const std::vector<std::string>& states)>;
void choose_rows(const Loose& loose, const std::string& table, const SalvagedHistory& history,
                 Recovered& recovered, const SeeStates& see);

} // namespace store
