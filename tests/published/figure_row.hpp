// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The published figures of figures.csv, a row each. Cells are not quoted and hold no commas.
#pragma once

#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace published {

struct FigureRow {
    std::string figure;
    std::string of;
    double least = 0; // in `unit`
    double most = 0;
    std::string unit;
    std::string ours;  // `is`, `at most` or `differs`
    double within = 0; // as a share of the published figure
    std::string source;
    std::string why; // of one that differs
};

inline FigureRow figure_row(const std::string& line) {
    std::vector<std::string> cells;
    std::istringstream in(line + ",");
    for (std::string cell; std::getline(in, cell, ',');)
        cells.push_back(cell);
    if (cells.size() != 9)
        throw std::runtime_error("not nine cells: " + line);
    return {cells[0], cells[1], std::stod(cells[2]), std::stod(cells[3]),
            cells[4], cells[5], std::stod(cells[6]), cells[7],
            cells[8]};
}

inline std::vector<FigureRow> read_figures(const std::string& path) {
    std::ifstream in(path);
    std::vector<FigureRow> rows;
    std::string line;
    std::getline(in, line); // the header
    while (std::getline(in, line))
        rows.push_back(figure_row(line));
    return rows;
}

} // namespace published
