// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Making the database image of the reference tables, when the program is built.
#pragma once

#include <filesystem>

namespace store {

// Reads reference.sql, one CSV file a table, derive.sql and check.sql from `folder` and writes the
// image, or nothing. Throws error::BadData naming file, line and column, or the check that found a
// row; error::InputOutput if a file cannot be read.
void compile_image(const std::filesystem::path& folder, const std::filesystem::path& image);

} // namespace store
