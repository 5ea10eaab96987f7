// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the history's triggers ask of the program: the change that is going on, rows as JSON, and
// digests. A change made without the program finds no such functions and fails. (SQLite's own JSON
// functions are not let into triggers of an untrusted schema by all versions.)
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace SQLite {
class Database;
}

namespace store {

// The change that is going on through one connection.
struct Session {
    std::optional<std::int64_t> group; // id of the change; empty: none is going on
    bool changed = false;              // a row of it was written to the history
};

// Registers counterpart_group(), counterpart_row(name, value, ...), counterpart_key(value, ...) and
// counterpart_digest(table, key, before, after). `session` must outlive the connection.
void register_functions(SQLite::Database& database, Session& session);

// FNV-1a, 64 bits: over each part's bytes, then 0xFF, which no UTF-8 holds; a missing part is 0xFE
// first. Finds accidents, not intent.
class Digest {
  public:
    void add(std::optional<std::string_view> part);
    [[nodiscard]] std::uint64_t value() const { return value_; }

  private:
    void add(unsigned char byte) { value_ = (value_ ^ byte) * 0x100000001B3U; }
    std::uint64_t value_ = 0xCBF29CE484222325U;
};

} // namespace store
