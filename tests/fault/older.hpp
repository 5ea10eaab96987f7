// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Catalogues as an earlier version of the program left them.
#pragma once

#include <filesystem>

namespace fault {

// A catalogue of version `version` with so many bodies, entered in one change.
void make_older(const std::filesystem::path& path, std::size_t version, int bodies);

} // namespace fault
