// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/what_it_is.hpp"

namespace cli {

std::string what_it_is(Tool tool, length::Unit stored) {
    std::visit(
        [](auto& record) {
            record.place.clear();
            record.loan.reset();
            record.retired.reset();
        },
        tool);
    const std::string line = one_line(tool, stored);
    return line.substr(line.find(": ") + 2);
}

} // namespace cli
