// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One change to the catalogue: a write transaction whose rows are kept in the history as a group.
#pragma once

#include <cstdint>
#include <string>

#include "store/file.hpp"
#include "store/transaction.hpp"

namespace store {

// Begins IMMEDIATE; taken back when destroyed without commit. Throws error::Busy after the file's
// busy timeout. A record that is read, changed and written back is read after this has begun, lest
// another program's change in between be overwritten. What changed is written to the history by the
// schema's triggers, never by the callers; a change that changes nothing leaves the file as it is,
// byte for byte.
class Change {
  public:
    // `words` says what the user asked for: `import bodies set-a.csv`.
    Change(File& file, const std::string& words);
    Change(const Change&) = delete;
    Change& operator=(const Change&) = delete;

    // Says that this change takes back group `group`, which the user called `words`.
    void set_undoes(std::int64_t group, const std::string& words);

    void commit();
    [[nodiscard]] const File& file() const { return file_; }
    [[nodiscard]] SQLite::Database& database() const { return file_.database(); }
    [[nodiscard]] Statements& statements() const { return file_.statements(); }

  private:
    File& file_;
    GroupWords words_;
    WriteTransaction transaction_;
    OpenGroup group_;
};

} // namespace store
