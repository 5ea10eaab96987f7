// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A bound for what is left of a cover problem. Every element gets a price; an option earns the
// prices of what it covers, less the ranks there. Whatever the prices, the prices of all elements
// and the costs of the options that earn most make together a bound that no cover beats
// (Lagrange's relaxation). Prices are raised where nothing covers and lowered where too much does
// (the subgradient method, each step mixed with the one before). Whole numbers throughout: the
// bound is exact, the same everywhere.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "make/cover_state.hpp"

namespace make {

// Steps are in parts of the step that would close the gap if the bound rose straight.
inline constexpr std::int64_t k_whole_step = 1024;

// How fast prices change: slower when the bound has not risen for some rounds.
struct CoverPace {
    std::int64_t share = k_whole_step;
    int patience = 6;
    int waited = 0;
};

class CoverRelaxation {
  public:
    CoverRelaxation(const CoverProblem& problem, const CoverGoal& goal);

    // Takes over what is left open. The prices are those of the state.
    void look_at(const CoverState& state);

    // Betters the bound by better prices, for so many rounds or until it is `enough`; `target` is
    // a value that covers are known to reach. Bounds are in k_cover_unit. Nothing: there is no
    // cover at all.
    std::optional<std::int64_t> improve(int rounds, std::int64_t target, std::int64_t enough,
                                        CoverPace& pace);

    // At the best prices found:
    [[nodiscard]] const std::vector<std::int64_t>& prices() const { return prices_; }
    // of the options that may still be taken, the most promising first;
    [[nodiscard]] CoverOptions by_cost() const;
    // those that no cover better than `enough` has.
    [[nodiscard]] CoverOptions hopeless(std::int64_t enough) const;

    [[nodiscard]] std::int64_t entries_seen() const { return entries_seen_; }

  private:
    struct Row {
        std::size_t element = 0;
        std::int64_t cap = 0; // what not covering it by a free option costs at most
        bool may_drop = false;
    };
    struct Cell {
        std::size_t row = 0;
        std::int64_t rank = 0; // in k_cover_unit
    };
    struct Column {
        std::size_t option = 0;
        std::size_t group = 0; // of those in a group one at most is taken
        std::size_t begin = 0; // cells
        std::size_t end = 0;
        std::int64_t cost = 0;
    };

    void add_row(const CoverState& state, std::size_t element);
    void add_column(const CoverState& state, std::size_t option);
    void group_columns();
    bool evaluate();
    void price_columns();
    bool choose_columns();
    void drop_dearest();
    void count_use();
    bool turn();
    void step(std::int64_t length);

    const CoverProblem* problem_;
    CoverGoal goal_;
    int to_take_ = 0;                 // of a rank goal
    int drops_ = 0;                   // still allowed
    std::int64_t settled_ = 0;        // part of every bound
    std::vector<std::size_t> row_of_; // by element
    std::vector<Row> rows_;
    std::vector<Cell> cells_;
    std::vector<Column> columns_;
    std::size_t groups_ = 0;
    std::vector<std::int64_t> prices_; // by element
    std::vector<std::int64_t> row_prices_;
    std::vector<int> slope_;            // by row: how often it is missing
    std::vector<std::int64_t> heading_; // by row: which way prices go
    std::vector<std::size_t> best_;     // by group: its cheapest column
    std::vector<std::size_t> chosen_;   // columns
    std::vector<bool> is_chosen_;       // by group
    std::int64_t dearest_ = 0;          // cost of the dearest chosen
    std::int64_t bound_ = 0;
    std::int64_t entries_seen_ = 0;
};

} // namespace make
