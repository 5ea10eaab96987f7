// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a replay of the history found wrong, and how the tables differ from it, value by value.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "store/check.hpp"
#include "store/replay.hpp"

namespace store {

// Adds a finding for every column in which two rows differ, or one for both as a whole where one is
// missing or is no JSON.
void add_differences(SQLite::Database& database, const Finding& about,
                     const std::optional<std::string>& recorded,
                     const std::optional<std::string>& found, std::vector<Finding>& findings);

// Of the tool that a row is about, if it is about one.
[[nodiscard]] std::optional<std::int64_t> number_of(SQLite::Database& database,
                                                    const std::string& row);

class Comparison {
  public:
    Comparison(SQLite::Database& database, std::vector<Finding>& findings)
        : database_(database), findings_(findings) {}

    // Entries that do not fit their sums or do not follow from the ones before.
    void complaints(const Replay& replay);

    // Every row of every kept table against its newest entry; returns how many rows there are.
    std::int64_t tables(const Replay& replay);

  private:
    std::int64_t table(const std::string& name, const Replay& replay);
    void row(const RowName& name, const Replay::Told* told, const std::optional<std::string>& row);

    SQLite::Database& database_;
    std::vector<Finding>& findings_;
};

} // namespace store
