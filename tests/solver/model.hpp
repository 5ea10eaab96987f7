// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Cover problems as whole-number programs in the CPLEX LP format, and glpsol (GNU Linear
// Programming Kit) to solve them.
#pragma once

#include <filesystem>
#include <string>

#include "cover_cases.hpp"

namespace model {

// Fewest choices among the covers that cover most: each element not covered costs more than all
// choices together. The objective is `drop_cost` times those, and the count.
[[nodiscard]] int drop_cost(const cover_cases::Case& problem);
[[nodiscard]] std::string fewest(const cover_cases::Case& problem);

// The least total of ranks of a cover with this many choices that leaves out so many elements.
[[nodiscard]] std::string best_ranks(const cover_cases::Case& problem, int count, int dropped);

// Runs glpsol in a directory of its own, which goes with it.
class Solver {
  public:
    Solver();
    ~Solver();
    Solver(const Solver&) = delete;
    Solver& operator=(const Solver&) = delete;

    // The objective of the best solution. Throws std::runtime_error if glpsol is missing, fails or
    // does not prove its solution best.
    [[nodiscard]] int solve(const std::string& program) const;

  private:
    std::filesystem::path directory_;
};

} // namespace model
