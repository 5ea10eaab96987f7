// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The work of `recover`: from a damaged catalogue that nobody else uses into an empty file.
#pragma once

#include <filesystem>

#include "store/recover.hpp"

namespace store {

// `called` is the damaged catalogue's own path, for messages. Leaves `path`, `saved` and `rows` of
// the answer empty.
Recovered rebuild(const std::filesystem::path& damaged, const std::filesystem::path& fresh,
                  const std::filesystem::path& called);

} // namespace store
