// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Who may do what with a file: its owner, its group and its permission bits.
#pragma once

#include <sys/types.h>

#include <filesystem>
#include <optional>

namespace store {

struct Rights {
    uid_t owner = 0;
    gid_t group = 0;
    mode_t mode = 0;

    bool operator==(const Rights&) const = default;
};

// Where a symbolic link leads; empty if nothing is there.
[[nodiscard]] std::optional<Rights> rights_of(const std::filesystem::path& path);

// Makes an open file as the user's new files are, but open to nobody to whom a file with `original`
// is not; its owner can always write it. A file system without rights leaves it as it is. Throws
// error::InputOutput.
void narrow(int handle, const std::optional<Rights>& original, const std::filesystem::path& path);

// Gives an open file the rights as far as the system lets: an owner or group that cannot be given
// opens it to nobody else. Throws error::InputOutput.
void give(int handle, const Rights& rights, const std::filesystem::path& path);

} // namespace store
