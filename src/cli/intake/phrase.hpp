// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Cells said in words: `3 flutes`, `cut 3/4 by micrometer`, `plain pilot`.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/record/column.hpp"

namespace cli::intake {

// `cut`, `pilot length`: what a column is called in a sentence.
[[nodiscard]] std::string label_of(std::string_view column);

[[nodiscard]] std::string phrase(const std::string& column, const std::string& cell);

// Those of the columns that `wants` picks and that are known, in the order of the columns. How a
// size is known follows it where both are told.
template <class Record, class Wants>
std::string phrases(const Record& record, const record::Columns<Record>& columns,
                    length::Unit stored, Wants wants) {
    std::string text;
    std::string last;
    for (const auto& column : columns) {
        const std::string cell = column.cell(record, stored);
        if (cell.empty() || !wants(column.name))
            continue;
        const std::string said = phrase(column.name, cell);
        const std::string of = said.substr(0, said.find(" by "));
        if (!last.empty() && !column.json && of == last)
            text += said.substr(of.size());
        else
            text += (text.empty() ? "" : ", ") + said;
        last = label_of(column.name);
    }
    return text;
}

} // namespace cli::intake
