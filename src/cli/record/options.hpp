// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Columns as options of a command: `cut_dia` is `--cut-dia`.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "cli/record/column.hpp"
#include "trade/text.hpp"

namespace cli::record {

// Declares an option for every column that is not in `without` and has none yet; what it is given
// goes into `cells`, which must live as long as the program parses. An empty value is 'not known'.
template <class Record>
void declare_columns(const Syntax& syntax, const Columns<Record>& columns,
                     const std::vector<std::string>& without, Cells& cells) {
    for (const Column<Record>& column : columns) {
        const std::string name = option_name(column.name);
        const bool left_out =
            std::find(without.begin(), without.end(), column.name) != without.end();
        if (left_out || syntax.has(name))
            continue;
        syntax
            .option(
                name,
                [&cells, key = column.name](const std::string& value) {
                    cells[key] = std::string(trade::trimmed(value));
                },
                column.about)
            .takes(column.placeholder);
    }
}

} // namespace cli::record
