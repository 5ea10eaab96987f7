// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One catalogue file: made, opened, refused or brought up to date.
#pragma once

#include <filesystem>
#include <memory>

#include "length/length.hpp"

namespace SQLite {
class Database;
}

namespace store {

enum class Access { read, write };

class File {
  public:
    // Makes a new catalogue whose bare numbers are in `unit`. Throws error::InputOutput if
    // something is already there or the folder is missing.
    static File create(const std::filesystem::path& path, length::Unit unit);

    // Opens a catalogue, bringing an older one up to date after a backup beside it. Throws
    // error::NoSuchRecord (no file), error::DamagedFile (a folder, not SQLite, foreign, newer),
    // error::InputOutput (for writing: more than one hard link, no permission), error::Busy.
    static File open(const std::filesystem::path& path, Access access);

    File(File&&) noexcept;
    File& operator=(File&&) noexcept;
    ~File();

    [[nodiscard]] length::Unit unit() const { return unit_; }
    [[nodiscard]] SQLite::Database& database() const { return *database_; }

  private:
    File(std::unique_ptr<SQLite::Database> database, length::Unit unit);
    std::unique_ptr<SQLite::Database> database_;
    length::Unit unit_;
};

} // namespace store
