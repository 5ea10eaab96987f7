// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Where a row of the tables is from, and how sure it is.
#pragma once

#include <string>

namespace trade {

struct Origin {
    std::string source;     // the publication or chart
    std::string confidence; // two sources, one source, memory, derived, common practice
    std::string note = {};  // what else bears on the row, such as a value from memory
};

} // namespace trade
