// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Backups under their catalogue's name and the date. Two catalogues may have one name and copies in
// one folder, so a copy is opened before it is taken away.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace store {

struct Thinned {
    std::vector<std::filesystem::path> dropped; // taken away
    std::size_t left_alone = 0; // of this name, but not known to be of this catalogue
};

// `catalogue.db.backup-2026-11-25-091241` for a file `catalogue.db`, now, UTC.
[[nodiscard]] std::string dated_name(const std::string& name);

// Takes away the oldest dated copies in the folder until `keep` are left, `newest` with them. Only
// earlier states of the catalogue that `newest` is a copy of are counted and taken away. Throws
// error::InputOutput if one cannot be.
[[nodiscard]] Thinned keep_newest(std::size_t keep, const std::filesystem::path& newest,
                                  const std::string& name);

} // namespace store
