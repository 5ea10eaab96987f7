// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is wrong with a file of records: all of it is found before anything is said.
#pragma once

#include <map>
#include <ostream>
#include <string>
#include <vector>

#include "cli/record/column.hpp"

namespace cli::transfer {

class Mistakes {
  public:
    // Rows count from 1, the header being row 1.
    void add(std::size_t row, const record::Problem& problem);
    void add(std::size_t row, const std::vector<record::Problem>& problems);

    void add(const Mistakes& more);

    [[nodiscard]] bool empty() const { return found_.empty(); }
    [[nodiscard]] std::size_t count() const { return found_.size(); }

    // `column: what: 'cell'; column: ...` of every row that has any.
    [[nodiscard]] std::map<std::size_t, std::string> by_row() const;

    // `FILE: row R, column C: what: 'cell'` and below it what was meant, by row; the first twenty
    // and how many more there are.
    void print(const std::string& file, std::ostream& err) const;

  private:
    struct Mistake {
        std::size_t row;
        record::Problem problem;
    };
    std::vector<Mistake> found_;
};

} // namespace cli::transfer
