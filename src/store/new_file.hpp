// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Files that appear whole under their name or not at all, and never over another.
#pragma once

#include <filesystem>

namespace store {

// A file beside `wanted` under a hidden name of its own, removed with its journal unless it was
// moved into place.
class NewFile {
  public:
    // Throws error::InputOutput if the folder is missing or may not be written.
    explicit NewFile(const std::filesystem::path& wanted);
    ~NewFile();
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;

    // Empty until it is written.
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

    // Gives it the name `wanted`; false if something has that name. The file must be closed and on
    // the disk; its folder is synced. Throws error::InputOutput.
    [[nodiscard]] bool move_to(const std::filesystem::path& wanted);

  private:
    std::filesystem::path path_;
    bool moved_ = false;
};

} // namespace store
