// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a line of quick entry takes over from the lines before it.
#pragma once

#include <map>
#include <string>

#include "cli/intake/items.hpp"
#include "cli/record/column.hpp"
#include "length/length.hpp"

namespace cli::intake {

struct Carry {
    std::string set;
    std::string place;
    bool one_place = false; // said after `all`: it does not count up
    // How a size of this column was known that was written the same way.
    std::map<std::string, std::string> hows;
    record::Cells bodies; // said after `all`
    record::Cells pilots;
    bool pilots_come = false;                // lines are of loose pilots
    length::Unit unit = length::Unit::inch;  // of bare numbers, here and in the cells above
    length::Unit usual = length::Unit::inch; // the same, where no line has said
};

// The place after this one: a number at its end counts up (`rack 1, hole 9` to `rack 1, hole 10`,
// `B4` to `B5`, `A09` to `A10`); one without a number stays.
[[nodiscard]] std::string next_place(const std::string& place);

// `25` after `rack 1, hole 22` is `rack 1, hole 25`.
[[nodiscard]] std::string said_place(const std::string& said, const std::string& before);

// The column and how the size is written: a fraction, a decimal of three places, of four, with
// limits. Two sizes that are written alike were likely found alike.
[[nodiscard]] std::string how_key(const std::string& column, const Size& size, bool metric);

} // namespace cli::intake
