// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Labels for the rack, in large type, to cut apart.
#pragma once

#include <string>
#include <vector>

#include "present/html.hpp"

namespace present {

// What stands on one label, as text.
struct Label {
    std::string number;
    std::string size;  // cutting diameter, or a pilot's diameter
    std::string what;  // `counterbore, bore 3/16`
    std::string place; // may be empty
};

// Pages of labels in the order given, with lines to cut along.
[[nodiscard]] std::string labels_html(const std::vector<Label>& labels, Paper paper);

} // namespace present
