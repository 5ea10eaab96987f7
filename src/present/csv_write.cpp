// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Quotes only where reading would go wrong without.
#include "present/csv.hpp"

namespace present {

namespace {

bool needs_quotes(std::string_view cell) {
    if (cell.empty())
        return false;
    return cell.find_first_of(",\"\r\n") != std::string_view::npos || cell.front() == ' ' ||
           cell.back() == ' ';
}

} // namespace

std::string csv_row(const std::vector<std::string>& cells) {
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0)
            line += ',';
        if (!needs_quotes(cells[i])) {
            line += cells[i];
            continue;
        }
        line += '"';
        for (const char c : cells[i])
            line += c == '"' ? std::string("\"\"") : std::string(1, c);
        line += '"';
    }
    if (line.empty())
        line = "\"\""; // an empty line would be no row at all
    return line + '\n';
}

} // namespace present
