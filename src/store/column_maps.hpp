// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the columns of a person's own files are called here, by the header row of the file.
#pragma once

#include <optional>
#include <string>

#include "store/change.hpp"

namespace store {

// Our names in the order of the header row, as a row of CSV; none for a header not seen before.
// `kind` is bodies, pilots, screws or house.
[[nodiscard]] std::optional<std::string> column_map(const File& file, const std::string& kind,
                                                    const std::string& header);

// Adds or replaces.
void put_column_map(Change& change, const std::string& kind, const std::string& header,
                    const std::string& ours);

} // namespace store
