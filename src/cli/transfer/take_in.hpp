// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Rows of a file into the catalogue, as part of one change. Every row is tried; what is wrong goes
// into `mistakes`, and if anything does the change must not be committed.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "cli/transfer/sheet.hpp"
#include "store/change.hpp"
#include "store/lists.hpp"
#include "trade/screw.hpp"

namespace cli::transfer {

// Shows the rows of a file, from the first, as often as asked for.
using Rows = std::function<void(const SeeRow& see)>;

// A row that was taken in, to be shown.
struct TakenRow {
    std::size_t row = 0;
    std::int64_t number = 0; // of a tool
    std::string what;
};

inline constexpr std::size_t k_most_shown = 500; // of these: a file may have a million

struct Destination {
    store::File& file;
    store::Change& change;
    record::Reading reading;
    Mistakes& mistakes;
    std::vector<TakenRow>* taken = nullptr; // the first of them, where they are wanted
};

// The numbers given, ascending.
std::vector<std::int64_t> take_in_bodies(const Rows& rows, Destination& to);
std::vector<std::int64_t> take_in_pilots(const Rows& rows, Destination& to);

// How many rows.
std::size_t take_in_screws(const Rows& rows, Destination& to);
std::size_t take_in_house(const Rows& rows, Destination& to, const trade::Tables& tables);

// Throws error::BadData for a hole that is none.
void check_house_hole(const store::HouseScrew& house, const trade::Screw& screw,
                      const trade::Tables& tables, const record::Reading& reading);

} // namespace cli::transfer
