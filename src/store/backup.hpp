// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Backups of a catalogue, and going back to one.
#pragma once

#include <filesystem>

#include "store/check.hpp"
#include "store/dated_copies.hpp"
#include "store/file.hpp"
#include "store/given_numbers.hpp"

namespace store {

struct BackedUp {
    std::filesystem::path path;
    std::int64_t rows = 0;
    Thinned thinned; // the older dated copies
};

// Copies the catalogue `path` to `to`; the copy is compared and checked before it gets its name,
// and no more people can read it than the catalogue. Throws error::InputOutput if something is
// there already and `replace` is not asked for, if it is the catalogue itself, a symbolic link, or
// another catalogue; error::DamagedFile if the catalogue is not whole.
BackedUp back_up(const std::filesystem::path& path, const std::filesystem::path& to, bool replace);

// The same, to `catalogue.db.backup-2026-11-25-091241` in `folder` (empty: beside the catalogue).
// With `keep` over 0, only so many dated copies of this catalogue stay there, the newest; those of
// another of the same name are left alone.
BackedUp back_up_dated(const std::filesystem::path& path, const std::filesystem::path& folder,
                       std::size_t keep);

struct Restored {
    std::filesystem::path saved; // the catalogue as it was; empty: there was none
    std::int64_t rows = 0;
    // Given out by the catalogue as it was, unknown to the copy: given out they stay.
    GivenNumbers since;
    bool another = false; // than the catalogue that was there
};

// Puts a copy in the place of the catalogue `path`. The copy is checked first and only read; the
// catalogue as it was is saved beside itself; the new file has its owner, group and mode. Numbers
// are never given out again. Throws error::NoSuchRecord (no copy), DamagedFile (the copy is not
// whole), Busy, InputOutput.
Restored restore(const std::filesystem::path& path, const std::filesystem::path& copy);

} // namespace store
