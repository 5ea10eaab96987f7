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

void print_csv_row(std::vector<std::string> cells, const Context& context) {
    if (context.on_terminal())
        for (std::string& cell : cells)
            cell = present::safe(cell);
    context.out() << present::csv_row(cells);
}

void print_csv(const std::vector<std::vector<std::string>>& rows, const Context& context) {
    for (const auto& cells : rows)
        print_csv_row(cells, context);
}

} // namespace cli
