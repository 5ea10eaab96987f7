// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A line of quick entry, read: the cells of a record as a file would hold them, what was taken over
// from the lines before, and what the next line may take over. Nothing here knows a terminal or a
// catalogue; whether a cell is right is for the columns of src/cli/record to say.
#pragma once

#include <map>
#include <set>
#include <string>

#include "cli/intake/carry.hpp"

namespace cli::intake {

struct Line {
    bool pilot = false; // a loose pilot; else a body
    record::Cells cells;
    length::Unit unit = length::Unit::inch;             // of bare numbers in them
    std::set<std::string, std::less<>> taken;           // columns that were taken over
    std::map<std::string, std::size_t, std::less<>> at; // where a column was said, in bytes
    Carry next;
};

// Throws LineError.
[[nodiscard]] Line read_line(const std::string& text, const Carry& carry);

} // namespace cli::intake
