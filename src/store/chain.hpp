// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The chain of the history's entries, which says where each stands: a sum of its number, group,
// tool and own sum and of the place before it, in a table of its own. Files older than it have
// none.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "store/replay.hpp"

namespace store {

[[nodiscard]] bool has_chain(SQLite::Database& database);

// The last entry that it has; 0: none.
[[nodiscard]] std::int64_t chain_end(SQLite::Database& database);

// The place of an entry after the one whose place is `former`; empty: it is the first of the chain.
[[nodiscard]] std::string place_of(const Entry& entry, const std::optional<std::string>& former);

// Throws error::DamagedFile if an entry does not fit its sum or its place, or has none.
void refuse_bad_place(const Entry& entry, SQLite::Database& database);

// Gives the entries that have no place yet theirs. With `held` each row must have been, before, as
// the newest earlier entry about it says, else error::DamagedFile: what is damaged is not written
// over. (A row that was not there has nothing to be held against.)
enum class Rows { held, as_they_are };
void chain_entries(SQLite::Database& database, Rows rows);

} // namespace store
