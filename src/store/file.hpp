// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One catalogue file: made, opened, refused or brought up to date.
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>

#include "length/length.hpp"

namespace SQLite {
class Database;
}

namespace store {

struct Connection;
struct Session;
class Statements;

enum class Access { read, write };

// How long another program's change is waited for.
inline constexpr std::chrono::milliseconds k_busy_timeout{5000};

class File {
  public:
    // Makes a new catalogue whose bare numbers are in `unit`; it appears under its name whole or
    // not at all. Throws error::InputOutput if something is already there or the folder is missing.
    static File create(const std::filesystem::path& path, length::Unit unit);

    // Opens a catalogue, bringing an older one up to date after a backup beside it. What is refused
    // stays untouched. Throws error::NoSuchRecord (no file), error::DamagedFile (a folder, empty,
    // not SQLite, foreign, newer, damaged), error::InputOutput (for writing: more than one hard
    // link, no permission), error::Busy.
    static File open(const std::filesystem::path& path, Access access,
                     std::chrono::milliseconds busy_timeout = k_busy_timeout);

    File(File&&) noexcept;
    File& operator=(File&&) noexcept;
    ~File();

    [[nodiscard]] length::Unit unit() const { return unit_; }
    [[nodiscard]] SQLite::Database& database() const;
    [[nodiscard]] Statements& statements() const; // kept prepared
    [[nodiscard]] Session& session() const;       // for Change

  private:
    explicit File(Connection connection);
    std::unique_ptr<Connection> connection_;
    length::Unit unit_ = length::Unit::inch;
};

} // namespace store
