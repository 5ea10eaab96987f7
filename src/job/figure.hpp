// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A figure of the sheet: its value, unrounded, and how it comes about, so that every number that is
// printed can be traced to a formula, its inputs and a source. Units are put on at the edge.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "length/range.hpp"

namespace job {

// What is not a length, each in one unit.
enum class Kind {
    angle,         // degrees
    area,          // square millimetres
    surface_speed, // metres a minute
    rotation,      // turns a minute
    torque,        // newton metres
    force,         // newtons
    pressure,      // megapascals
    time,          // seconds
    number,        // a pure number
};

struct Measure {
    Kind kind = Kind::number;
    double lo = 0;
    double hi = 0; // >= lo
};

using Value = std::variant<std::string, length::Range, Measure>;

struct Input {
    std::string name;
    Value value;
};

// How finely the sheet writes a figure for the machine; JSON and gauging keep it as it is.
enum class Grain {
    usual, // .001 in, 0.1 mm; turns to two figures
    close, // .001 in, 0.01 mm: clearances, feeds
    stop,  // .001 in with the nearest 1/64, 0.1 mm
    set,   // as it stands: a speed that a machine has, limits that a piece is made to
};

struct Figure {
    std::string name; // `stop travel`
    Value value;
    std::string formula; // in the names of the inputs: `head height + below the surface`
    std::vector<Input> inputs;
    std::string source; // or `common practice`
    Grain grain = Grain::usual;
};

} // namespace job
