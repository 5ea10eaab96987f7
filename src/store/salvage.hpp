// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the history of a damaged catalogue still tells.
#pragma once

#include <cstdint>
#include <map>
#include <set>
#include <vector>

#include "store/loose.hpp"
#include "store/replay.hpp"

namespace store {

struct SalvagedHistory {
    std::vector<std::int64_t> good;      // entries that are sound, in order
    std::map<std::int64_t, RowName> bad; // entries that are not, and the rows they name
    std::int64_t newest_lost = 0;        // of those between and after: 0 if none is missing
    std::int64_t lost = 0;               // how many are missing
    bool end_known = false;              // none is missing but those
    Replay replay;                       // of the good ones

    // Nothing is missing: what it does not tell was not.
    [[nodiscard]] bool complete() const { return end_known && bad.empty() && lost == 0; }
    [[nodiscard]] bool whole() const { return complete() && replay.complaints().empty(); }
};

[[nodiscard]] SalvagedHistory salvage_history(const Loose& loose);

} // namespace store
