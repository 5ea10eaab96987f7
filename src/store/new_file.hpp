// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Files that appear whole under their name or not at all. What is at the name is never written to:
// the new file takes its place, of a symbolic link too.
#pragma once

#include <filesystem>
#include <optional>
#include <string_view>
#include <vector>

#include "store/rights.hpp"

namespace store {

// Where a symbolic link leads; the path itself if it is none.
[[nodiscard]] std::filesystem::path real_path(const std::filesystem::path& path);

// Throws error::InputOutput for what no output is written over: a symbolic link, a folder, a
// device.
void refuse_output(const std::filesystem::path& wanted);
[[noreturn]] void
throw_already_there(const std::filesystem::path& wanted,
                    const char* hint = "name another file, or replace it with --force");

// A file beside `wanted` under a hidden name of its own, removed with its journal unless it was
// moved into place. While it is not, it is held by a lock, so that `drop_left_over` knows it from
// one that a kill left behind.
class NewFile {
  public:
    // Open to others as the user's new files are, and to nobody to whom `original` is not. Throws
    // error::InputOutput if the folder is missing or may not be written.
    explicit NewFile(const std::filesystem::path& wanted,
                     const std::optional<Rights>& original = std::nullopt);
    ~NewFile();
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;

    // Empty until it is written.
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    // Where it was written.
    [[nodiscard]] const std::filesystem::path& hidden() const { return hidden_; }

    // All of its bytes, put on the disk. Throws error::InputOutput.
    void write(std::string_view bytes) const;
    // Owner, group and mode, as far as the system lets.
    void take_rights(const Rights& rights) const { give(handle_, rights, path_); }

    // Gives it the name `wanted`; false if something has that name. The file must be closed and on
    // the disk; its folder is synced. Throws error::InputOutput.
    [[nodiscard]] bool move_to(const std::filesystem::path& wanted);

    // The same, in the place and with the rights of what has the name. In its place is also one of
    // which the system could not say, in the end, that it will stay there.
    void replace(const std::filesystem::path& wanted);
    [[nodiscard]] bool is_in_place() const { return moved_; }

  private:
    void open_beside(const std::filesystem::path& wanted);
    void let_go();

    int handle_ = -1;
    std::filesystem::path hidden_;
    std::filesystem::path path_;
    bool moved_ = false;
};

// Takes away the hidden files beside `wanted` that runs left there which were cut short, never one
// that a run is writing; returns their paths.
std::vector<std::filesystem::path> drop_left_over(const std::filesystem::path& wanted);

} // namespace store
