// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A new file in the place of the catalogue, with the old one saved first and nobody's change lost
// in between.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "store/connection.hpp"

namespace store {

class NewFile;

// Gives the file the name `wanted`, or `wanted.2` and so on if there is one; returns the name.
std::filesystem::path move_beside(NewFile& file, const std::filesystem::path& wanted);

// The place of a catalogue. While this is, everybody else waits; one that had the old file open
// cannot write it once another is in its place.
class Place {
  public:
    // Throws error::Busy, InputOutput.
    explicit Place(const std::filesystem::path& path);

    // Nothing is there, or was when this was made.
    [[nodiscard]] bool is_free() const { return free_; }
    // The catalogue that is there, its last change whole or taken back; none if SQLite cannot open
    // it: then nobody else can either.
    [[nodiscard]] SQLite::Database* catalogue() const;
    // Copies it to a file that is there and empty; as it is if SQLite cannot read it.
    void copy_to(const std::filesystem::path& to) const;

    // Saves the catalogue as it is under its name with `word` and the date, then puts the new file
    // in its place. Returns the saved file's path; empty if there was no catalogue. Throws
    // error::Busy, InputOutput.
    std::filesystem::path put(NewFile& file, const std::string& word) const;

  private:
    std::filesystem::path path_;   // as called
    std::filesystem::path target_; // where a link leads
    bool free_ = false;
    std::optional<Connection> locked_;
};

// Copies a file that SQLite cannot open, and the journal beside it, as they are.
void copy_bytes(const std::filesystem::path& from, const std::filesystem::path& to);

} // namespace store
