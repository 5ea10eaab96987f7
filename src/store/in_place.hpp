// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A new file in the place of the catalogue, with the old one saved first and nobody's change lost
// in between.
#pragma once

#include <filesystem>
#include <string>

namespace store {

class NewFile;

// Where a symbolic link leads; the path itself if it is none.
[[nodiscard]] std::filesystem::path real_path(const std::filesystem::path& path);

// Gives the file the name `wanted`, or `wanted.2` and so on if there is one; returns the name.
std::filesystem::path move_beside(NewFile& file, const std::filesystem::path& wanted);

// Saves the catalogue as it is under its name with `word` and the date, then puts the new file in
// its place. Others wait meanwhile; one that had the old file open cannot write it any more.
// Returns the saved file's path; empty if there was no catalogue. Throws error::Busy, InputOutput.
std::filesystem::path put_in_place(NewFile& file, const std::filesystem::path& path,
                                   const std::string& word);

// Copies a file that SQLite cannot open, and the journal beside it, as they are.
void copy_bytes(const std::filesystem::path& from, const std::filesystem::path& to);

} // namespace store
