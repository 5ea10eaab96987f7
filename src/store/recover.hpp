// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A new catalogue from what is left of a damaged one: the tables from the history, or the
// history's last state from the tables where the history is what is damaged.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "store/check.hpp"

namespace store {

struct Recovered {
    std::filesystem::path path;    // of the new catalogue
    std::filesystem::path saved;   // of the damaged one, if the new one took its place
    std::int64_t rows = 0;         // in the new one
    bool history_whole = false;    // and `undo` works on
    std::vector<Finding> mended;   // what was wrong and is as the history has it
    std::vector<Finding> doubtful; // kept, but nothing vouches for it
    std::vector<std::string> lost; // what could not be saved
};

// Reads the catalogue `path` without changing it and writes a new one to `to`, which must not be
// there; if `to` is `path` itself, the damaged one is saved beside itself first. Throws
// error::DamagedFile if SQLite can read nothing of it, InputOutput, Busy.
Recovered recover(const std::filesystem::path& path, const std::filesystem::path& to);

} // namespace store
