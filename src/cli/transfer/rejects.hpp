// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The rows of a file that cannot be taken in, to be corrected and imported again.
#pragma once

#include <map>
#include <string>

#include "present/csv.hpp"

namespace cli::transfer {

// The header and the rows named in `problems` as they stand in the file, and a last column that
// says what is wrong with each.
[[nodiscard]] std::string rejects_csv(present::CsvSource source,
                                      const std::map<std::size_t, std::string>& problems);

} // namespace cli::transfer
