// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/format.hpp"

#include <CLI/CLI.hpp>

#include "present/csv.hpp"
#include "present/text.hpp"

namespace cli {

void declare_format(CLI::App& app, Format& format) {
    auto* json = app.add_flag("--json", format.json, "print JSON, lengths in millimetres");
    app.add_flag("--csv", format.csv, "print comma-separated values")->excludes(json);
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
