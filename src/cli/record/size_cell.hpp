// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Dimensions in cells and options: in, with the unit that a bare number is in, and out again
// without loss.
#pragma once

#include <string>
#include <string_view>

#include "trade/dimension.hpp"
#include "trade/tables.hpp"

namespace cli::record {

// What reading a cell needs besides the cell.
struct Reading {
    length::Unit bare;   // of bare numbers here
    length::Unit stored; // of bare numbers in the catalogue
    const trade::Practice* practice;
    const trade::Tables* tables; // of the drills that pilots are marked with
};

// The text as the catalogue keeps it: where a bare number here is not in the catalogue's unit, its
// unit is written to it; a drill's name has none. Throws error::BadData for what is no length.
[[nodiscard]] std::string with_stored_unit(std::string_view text, const Reading& reading);

// Throws error::BadData, also for a size that a spreadsheet turned into a date.
[[nodiscard]] trade::Dimension read_size(std::string_view text, trade::How how,
                                         trade::Feature feature, const Reading& reading);

// The same of a text that is in the catalogue: bare numbers are in its unit.
[[nodiscard]] trade::Dimension read_stored_size(std::string_view text, trade::How how,
                                                trade::Feature feature, const Reading& reading);

// How a value on the command line was taken. Without a word a decimal is by caliper and a fraction
// off a rule; limits and the name of a drill speak for themselves. Throws error::BadData.
[[nodiscard]] trade::How how_taken(std::string_view word, std::string_view value,
                                   length::Unit bare);

// The cell of a dimension whose 'how' has no column: the text as written, with limits added where
// reading the bare text would lose them.
[[nodiscard]] std::string size_with_limits(const trade::Dimension& dimension, length::Unit stored);

} // namespace cli::record
