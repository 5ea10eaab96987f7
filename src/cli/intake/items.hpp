// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A line of quick entry taken apart: each word with the sizes, number or text that follow it. What
// they mean for a tool is for line.hpp to say.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "cli/intake/words.hpp"
#include "error/error.hpp"

namespace cli::intake {

// What is wrong with a line, and where: bytes from its start.
struct LineError : error::BadData {
    LineError(std::size_t where, const std::string& message, const std::string& hint)
        : BadData(message, hint), at(where) {}
    std::size_t at;
};

// One size as a cell holds it: `3/4`, `.5935 +-.0002`, `go .1250 no-go .1260`, `10 mm`, `#7`.
struct Size {
    std::size_t at = 0;
    std::string value;  // the figure, or both of a gauge
    std::string unit;   // as typed: `mm`, ` mm`, `"`; empty when not said
    std::string limits; // `+-.0002`
    std::string how;    // how it is known, when the line says
    bool fraction = false;
    bool drill = false;     // the name of a drill that a pilot is marked with
    std::size_t places = 0; // decimal places

    [[nodiscard]] std::string cell() const {
        return value + unit + (limits.empty() ? "" : ' ' + limits);
    }
};

struct Item {
    std::size_t at = 0;
    const Word* word = nullptr; // null for sizes without a name
    std::vector<Size> sizes;
    std::string text;     // of a count, a phrase, a text, a screw, a taper
    bool unknown = false; // `bore unknown`
    bool for_all = false; // stands after `all`
};

// Throws LineError.
[[nodiscard]] std::vector<Item> take_apart(const std::string& line);

} // namespace cli::intake
