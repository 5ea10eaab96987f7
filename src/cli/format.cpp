// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/format.hpp"

#include "present/csv.hpp"
#include "present/text.hpp"

namespace cli {

void declare_format(const Syntax& syntax, Format& format) {
    const auto json = syntax.flag("--json", format.json, "print JSON, lengths in millimetres");
    syntax.flag("--csv", format.csv, "print comma-separated values").excludes(json);
}

void print_csv(const std::vector<std::vector<std::string>>& rows, const Context& context) {
    for (std::vector<std::string> cells : rows) {
        if (context.on_terminal())
            for (std::string& cell : cells)
                cell = present::safe(cell);
        context.out() << present::csv_row(cells);
    }
}

} // namespace cli
