// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/transfer/rejects.hpp"

#include "cli/transfer/column_map.hpp"
#include "trade/text.hpp"

namespace cli::transfer {

namespace {

// A row without what an earlier import found wrong with it, and with what was found now.
std::string row_with(const std::vector<std::string>& cells, const std::vector<std::string>& header,
                     const std::string& problem) {
    std::vector<std::string> kept;
    for (std::size_t i = 0; i < cells.size(); ++i)
        if (trade::folded(header[i]) != k_problem_column)
            kept.push_back(cells[i]);
    kept.push_back(problem);
    return present::csv_row(kept);
}

} // namespace

std::string rejects_csv(present::CsvSource source,
                        const std::map<std::size_t, std::string>& problems) {
    present::CsvReader reader(std::move(source));
    const std::vector<std::string> header = reader.header();
    std::string result = row_with(header, header, std::string(k_problem_column));
    while (const auto row = reader.next())
        if (const auto found = problems.find(row->row); found != problems.end())
            result += row_with(row->cells, header, found->second);
    return result;
}

} // namespace cli::transfer
