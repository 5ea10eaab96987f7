// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One change to the catalogue: a write transaction whose rows are kept in the history as a group.
#pragma once

#include <string>

#include "store/file.hpp"

namespace store {

// Begins IMMEDIATE; taken back when destroyed without commit. Throws error::Busy after 5 s.
// What changed is written to the history by the schema's triggers, never by the callers.
class Change {
  public:
    // `words` says what the user asked for: `import bodies set-a.csv`.
    Change(File& file, const std::string& words);
    ~Change();
    Change(const Change&) = delete;
    Change& operator=(const Change&) = delete;

    void commit();
    [[nodiscard]] SQLite::Database& database() const;

  private:
    File& file_;
    bool committed_ = false;
};

} // namespace store
