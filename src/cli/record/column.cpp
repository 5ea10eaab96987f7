// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Naming a problem by its column or its option.
#include "cli/record/column.hpp"

#include <algorithm>

#include "error/error.hpp"

namespace cli::record {

std::string option_name(const std::string& column) {
    std::string name = "--" + column;
    std::replace(name.begin(), name.end(), '_', '-');
    return name;
}

Problem problem_of(const std::string& column, const std::string& cell, const std::string& message,
                   const std::string& hint) {
    std::string what = message;
    for (const std::string& ending : {": '" + cell + "'", ": " + cell}) {
        const bool ends = what.size() > ending.size() &&
                          what.compare(what.size() - ending.size(), ending.size(), ending) == 0;
        if (!ends)
            continue;
        what.resize(what.size() - ending.size());
        break;
    }
    return {column, what, cell, hint};
}

void refuse_options(const std::vector<Problem>& problems) {
    if (problems.empty())
        return;
    Problem first = problems.front();
    first.column = first.column == "screw" ? "SCREW" : option_name(first.column);
    refuse_columns({first});
}

void refuse_columns(const std::vector<Problem>& problems) {
    if (problems.empty())
        return;
    const Problem& first = problems.front();
    throw error::BadData(first.column + ": " + first.what + ": '" + first.cell + "'", first.meant);
}

} // namespace cli::record
