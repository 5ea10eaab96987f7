// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The kept tables as the history tells them: its entries, oldest first, each checked against its
// own sum, its place in the chain, and the entry before it about the same row.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace SQLite {
class Database;
}

namespace store {

// One row of the history table.
struct Entry {
    std::int64_t id = 0;
    std::int64_t group = 0;
    std::string table;
    std::string key;                    // JSON array
    std::optional<std::int64_t> number; // of the tool, where it is one
    std::optional<std::string> before;  // the whole row as JSON; empty: it was not there
    std::optional<std::string> after;   // empty: it is gone
    std::string digest;
    std::optional<std::string> place; // its sum in the chain; empty: it has none there
};

// What a query of entries begins with, and what it takes from a row. A file older than the chain
// has no places.
class Query;
[[nodiscard]] std::string select_entries(SQLite::Database& database);
[[nodiscard]] Entry take_entry(Query& query);
// Empty if there is none. Throws error::DamagedFile if it cannot be read.
[[nodiscard]] std::optional<Entry> entry(SQLite::Database& database, std::int64_t id);

// Where replaying begins: the first entry of the last snapshot, or 0.
[[nodiscard]] std::int64_t replay_start(SQLite::Database& database);

[[nodiscard]] bool fits_its_sum(const Entry& entry);

[[noreturn]] void throw_bad(const Entry& entry, const char* what, SQLite::Database& database);
// Throws error::DamagedFile if an entry does not fit its sum.
void refuse_bad_sum(const Entry& entry, SQLite::Database& database);

// A row by its table and its key.
using RowName = std::pair<std::string, std::string>;

class Replay {
  public:
    // The newest entry about a row. `sum` stands for the row after it, so that a large catalogue
    // fits into memory; empty: the row is gone.
    struct Told {
        std::int64_t entry = 0;
        std::optional<std::size_t> sum;
        bool fits = true; // its own sum
    };

    enum class Fault { sum, place, order };
    struct Complaint {
        Fault fault;
        std::int64_t entry;
        std::int64_t earlier; // of the entry that this one does not follow; 0: none
    };

    // Takes the next entry. Entries before `start` are in the shape of older tables: but for those
    // about changes, only their sums and places are looked at.
    void add(const Entry& entry, std::int64_t start);

    [[nodiscard]] const std::map<RowName, Told>& rows() const { return rows_; }
    [[nodiscard]] const std::vector<Complaint>& complaints() const { return complaints_; }
    [[nodiscard]] std::int64_t count() const { return count_; }

    [[nodiscard]] static std::size_t sum(const std::string& row);

  private:
    [[nodiscard]] bool fits_place(const Entry& entry);

    std::map<RowName, Told> rows_;
    std::vector<Complaint> complaints_;
    std::int64_t count_ = 0;
    std::int64_t last_ = 0;            // id of the entry taken last
    std::optional<std::string> place_; // its place
    bool chained_ = false;             // the chain has begun
};

} // namespace store
