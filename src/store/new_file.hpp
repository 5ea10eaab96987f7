// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Files that appear whole under their name or not at all.
#pragma once

#include <filesystem>

namespace store {

// A file beside `wanted` under a hidden name of its own, removed with its journal unless it was
// moved into place.
class NewFile {
  public:
    // Open to others as the user's new files are, and no wider than `widest`. Throws
    // error::InputOutput if the folder is missing or may not be written.
    explicit NewFile(const std::filesystem::path& wanted,
                     std::filesystem::perms widest = std::filesystem::perms::all);
    ~NewFile();
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;

    // Empty until it is written.
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    // Where it was written.
    [[nodiscard]] const std::filesystem::path& hidden() const { return hidden_; }

    // Gives it the name `wanted`; false if something has that name. The file must be closed and on
    // the disk; its folder is synced. Throws error::InputOutput.
    [[nodiscard]] bool move_to(const std::filesystem::path& wanted);

    // The same, in the place of what has the name. In its place is also one of which the system
    // could not say, in the end, that it will stay there.
    void replace(const std::filesystem::path& wanted);
    [[nodiscard]] bool is_in_place() const { return moved_; }

  private:
    std::filesystem::path hidden_;
    std::filesystem::path path_;
    bool moved_ = false;
};

} // namespace store
