// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The small tables: the shop's own screws, the house list, practice, machines, bar stock.
#pragma once

#include <string>
#include <vector>

#include "store/change.hpp"
#include "trade/machine.hpp"
#include "trade/practice.hpp"
#include "trade/screw.hpp"

namespace store {

// A screw the shop wants to be able to counterbore.
struct HouseScrew {
    std::string screw; // SCREW text
    std::string hole;  // as for `match --hole`; empty: any
    std::string note;
};

[[nodiscard]] std::vector<trade::OwnScrew> own_screws(const File& file); // by name
void put_own_screw(Change& change, const trade::OwnScrew& screw);        // adds or replaces
void drop_own_screw(Change& change, const std::string& name);            // NoSuchRecord

[[nodiscard]] std::vector<HouseScrew> house(const File& file); // in order of entry
void put_house(Change& change, const HouseScrew& screw);       // adds or replaces by screw and hole
void drop_house(Change& change, const std::string& screw, const std::string& hole);

// The shop's own values by name; the defaults are in the reference tables.
[[nodiscard]] std::vector<trade::PracticeRow> own_practice(const File& file);
void set_practice(Change& change, const std::string& name, const std::string& value);
void reset_practice(Change& change, const std::string& name);

[[nodiscard]] std::vector<trade::Machine> machines(const File& file);
void put_machine(Change& change, const trade::Machine& machine);
void drop_machine(Change& change, const std::string& name);

// Diameters of the bars that the shop turns pilots from, ascending.
[[nodiscard]] std::vector<length::Length> stock_bars(const File& file);
void put_stock_bar(Change& change, length::Length diameter); // once is enough
// `size` is the diameter as written. Throws error::NoSuchRecord.
void drop_stock_bar(Change& change, length::Length diameter, const std::string& size);

} // namespace store
