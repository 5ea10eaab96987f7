// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What changed, when, and taking it back.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "store/file.hpp"

namespace store {

// One changed row.
struct HistoryRow {
    std::int64_t group = 0;
    std::string time;                   // UTC, ISO 8601
    std::string words;                  // what the user asked for
    std::optional<std::int64_t> undoes; // the group that this one took back
    std::string table;
    std::optional<std::int64_t> number; // of the tool, where it is one
    std::string before;                 // JSON of the row; empty: it was not there
    std::string after;                  // empty: it is gone
};

// Oldest first; of one tool (its trials and work too) or of everything. Throws error::DamagedFile
// for an entry that does not fit its sum.
void each_history_row(const File& file, std::optional<std::int64_t> number,
                      const std::function<void(const HistoryRow&)>& see);
[[nodiscard]] std::vector<HistoryRow> history(const File& file, std::optional<std::int64_t> number);

struct Undone {
    std::string words; // of the change taken back
    std::string time;
    int rows = 0;
};

// Takes back the newest change that is not itself an undo and not yet undone, as a new change.
// Throws error::NoSuchRecord when there is none, error::DamagedFile when its history is not sound
// or a row is not as that change left it.
Undone undo(File& file);

} // namespace store
