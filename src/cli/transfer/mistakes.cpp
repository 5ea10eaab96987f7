// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/transfer/mistakes.hpp"

#include <algorithm>

#include "present/text.hpp"

namespace cli::transfer {

namespace {

constexpr std::size_t k_most_printed = 20;
constexpr std::size_t k_longest_cell = 60; // as far as it is shown

} // namespace

void Mistakes::add(std::size_t row, const record::Problem& problem) {
    found_.push_back({row, problem});
}

void Mistakes::add(std::size_t row, const std::vector<record::Problem>& problems) {
    for (const record::Problem& problem : problems)
        add(row, problem);
}

void Mistakes::add(const Mistakes& more) {
    found_.insert(found_.end(), more.found_.begin(), more.found_.end());
}

std::map<std::size_t, std::string> Mistakes::by_row() const {
    std::map<std::size_t, std::string> rows;
    for (const auto& [row, problem] : found_) {
        std::string& text = rows[row];
        text += text.empty() ? "" : "; ";
        text += problem.column.empty() ? "" : problem.column + ": ";
        text += problem.what;
        if (!problem.cell.empty())
            text += ": '" + problem.cell + '\'';
    }
    return rows;
}

void Mistakes::print(const std::string& file, std::ostream& err) const {
    std::vector<Mistake> sorted = found_;
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const Mistake& a, const Mistake& b) { return a.row < b.row; });
    for (std::size_t i = 0; i < std::min(sorted.size(), k_most_printed); ++i) {
        const record::Problem& problem = sorted[i].problem;
        err << present::safe(file) << ": row " << sorted[i].row;
        if (!problem.column.empty())
            err << ", column " << present::safe(problem.column);
        err << ": " << present::safe(problem.what);
        if (!problem.cell.empty())
            err << ": '" << present::cut(present::safe(problem.cell), k_longest_cell) << '\'';
        err << '\n';
        if (!problem.meant.empty())
            err << "    " << present::safe(problem.meant) << '\n';
    }
    if (sorted.size() > k_most_printed)
        err << present::safe(file) << ": and " << sorted.size() - k_most_printed << " more\n";
}

} // namespace cli::transfer
