// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Counterbores and removable pilots as standards and handbooks list them.
#pragma once

#include <string>

#include "length/range.hpp"
#include "trade/origin.hpp"

namespace trade {

// A dimension as listed: one nominal (lo == hi), or a band of sizes that share a row.
struct PublishedSize {
    length::MaybeRange listed; // absent: the row does not say
    length::MaybeRange limits; // of the nominal, where they are printed
};

struct PublishedTool {
    std::string standard; // `DIN 373`, `removable pilot, straight shank`, ...
    std::string edition;  // year; mostly empty
    std::string size;     // of the screw, ScrewSize::text; empty: none is named
    std::string hole;     // nominal, +1/64, +1/32, fine, medium, tapping; empty: not named
    length::Unit unit = length::Unit::inch; // the row is printed in
    PublishedSize cut_dia;
    std::string pilot_kind; // integral, removable, interchangeable
    PublishedSize pilot_dia;
    PublishedSize bore;
    std::string shank; // straight, Morse taper, ...
    PublishedSize shank_dia;
    Origin origin;
};

struct PublishedPilot {
    std::string standard;
    std::string size; // of the screw; empty: none is named
    std::string hole; // fine, medium, tapping, old medium; empty: not named
    length::Unit unit = length::Unit::inch;
    PublishedSize cut_dia; // of the body it goes in
    PublishedSize pilot_dia;
    PublishedSize shank_dia; // goes in the bore
    std::string retention;
    Origin origin;
};

} // namespace trade
