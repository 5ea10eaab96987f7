// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What cannot be used as a catalogue, said before anything is written.
#pragma once

#include <filesystem>

namespace SQLite {
class Database;
}

namespace store {

enum class Access;

// By the path alone: not there (error::NoSuchRecord), a folder or device (DamagedFile), for
// writing more than one hard link (InputOutput).
void refuse_path(const std::filesystem::path& path, Access access);

// By the first bytes, read through SQLite's own file so that no lock of this process is lost and
// no journal is played back: empty, too short, not SQLite, another program's, newer (DamagedFile).
void refuse_header(SQLite::Database& database, const std::filesystem::path& path);

// Throws error::DamagedFile for a version that this program does not know.
void refuse_version(std::int64_t version, const std::filesystem::path& path);

} // namespace store
