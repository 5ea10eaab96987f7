// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/cover_relaxation.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <tuple>
#include <utility>

namespace make {

namespace {

constexpr std::int64_t k_uncapped = std::numeric_limits<std::int64_t>::max() / 4;

// A heading is in these parts of a slope, and keeps so many sixteenths of the one before: it then
// swings less from side to side.
constexpr std::int64_t k_heading_unit = 64;
constexpr std::int64_t k_heading_kept = 13;

} // namespace

CoverRelaxation::CoverRelaxation(const CoverProblem& problem, const CoverGoal& goal)
    : problem_(&problem), goal_(goal) {}

void CoverRelaxation::look_at(const CoverState& state) {
    to_take_ = goal_.count - state.count();
    drops_ = goal_.drops - state.dropped();
    settled_ = k_cover_unit * (goal_.aim == CoverAim::coverage ? state.dropped()
                               : goal_.aim == CoverAim::count  ? state.count()
                                                               : state.total_rank());
    rows_.clear();
    cells_.clear();
    columns_.clear();
    row_of_.assign(problem_->elements.size(), k_nowhere);
    prices_ = state.prices;
    for (const std::size_t element : state.open())
        add_row(state, element);
    for (std::size_t o = 0; o < problem_->options.size(); ++o)
        if (state.is_free(o) && state.covers_an_open(o))
            add_column(state, o);
    group_columns();
    row_prices_.clear();
    for (const auto& row : rows_)
        row_prices_.push_back(prices_[row.element]);
}

void CoverRelaxation::add_row(const CoverState& state, std::size_t element) {
    const bool may_drop = problem_->elements[element].may_drop;
    const int had = state.had(element);
    std::int64_t cap = k_uncapped;
    if (had >= 0) {
        // Covered already: only a better rank is of use, and the bound holds its rank by the row.
        cap = had * k_cover_unit;
        settled_ -= cap;
    } else if (goal_.aim == CoverAim::coverage && may_drop) {
        cap = k_cover_unit;
    }
    row_of_[element] = rows_.size();
    rows_.push_back({element, cap, had == k_open && may_drop && goal_.aim != CoverAim::coverage});
}

void CoverRelaxation::add_column(const CoverState& state, std::size_t option) {
    Column column{option, 0, cells_.size(), 0, 0};
    for (const auto& entry : problem_->options[option].elements) {
        if (!improves(entry, state.had(entry.at)))
            continue;
        if (row_of_[entry.at] == k_nowhere)
            add_row(state, entry.at);
        cells_.push_back({row_of_[entry.at], entry.rank * k_cover_unit});
    }
    column.end = cells_.size();
    columns_.push_back(column);
}

void CoverRelaxation::group_columns() {
    std::map<int, std::size_t> of_resource;
    groups_ = 0;
    for (auto& column : columns_) {
        const int resource = problem_->options[column.option].resource;
        column.group =
            resource < 0 ? groups_ : of_resource.try_emplace(resource, groups_).first->second;
        groups_ = std::max(groups_, column.group + 1);
    }
}

void CoverRelaxation::price_columns() {
    const std::int64_t price = goal_.aim == CoverAim::count ? k_cover_unit : 0;
    for (auto& column : columns_) {
        column.cost = price;
        for (std::size_t c = column.begin; c < column.end; ++c)
            column.cost += std::min<std::int64_t>(0, cells_[c].rank - row_prices_[cells_[c].row]);
    }
    entries_seen_ += static_cast<std::int64_t>(cells_.size() + columns_.size());
}

bool CoverRelaxation::choose_columns() {
    const auto cheaper = [this](std::size_t a, std::size_t b) {
        return std::tie(columns_[a].cost, a) < std::tie(columns_[b].cost, b);
    };
    best_.assign(groups_, k_nowhere);
    for (std::size_t j = 0; j < columns_.size(); ++j) {
        auto& best = best_[columns_[j].group];
        if (best == k_nowhere || cheaper(j, best))
            best = j;
    }
    chosen_ = best_;
    if (goal_.aim == CoverAim::rank) {
        if (to_take_ < 0 || std::cmp_greater(to_take_, groups_))
            return false;
        std::nth_element(chosen_.begin(), chosen_.begin() + to_take_, chosen_.end(), cheaper);
        chosen_.resize(static_cast<std::size_t>(to_take_));
    } else {
        std::erase_if(chosen_, [this](std::size_t j) { return columns_[j].cost >= 0; });
    }
    is_chosen_.assign(groups_, false);
    dearest_ = goal_.aim == CoverAim::rank ? -k_uncapped : 0;
    for (const std::size_t j : chosen_) {
        is_chosen_[columns_[j].group] = true;
        dearest_ = std::max(dearest_, columns_[j].cost);
        bound_ += columns_[j].cost;
    }
    return true;
}

void CoverRelaxation::count_use() {
    for (std::size_t r = 0; r < rows_.size(); ++r) {
        const bool capped = row_prices_[r] > rows_[r].cap;
        slope_.push_back(capped ? 0 : 1);
        bound_ += capped ? rows_[r].cap : row_prices_[r];
    }
    for (const std::size_t j : chosen_)
        for (std::size_t c = columns_[j].begin; c < columns_[j].end; ++c)
            if (row_prices_[cells_[c].row] > cells_[c].rank)
                --slope_[cells_[c].row];
}

// As many elements as may be dropped are: those with the highest prices.
void CoverRelaxation::drop_dearest() {
    if (goal_.aim == CoverAim::coverage || drops_ <= 0)
        return;
    std::vector<std::size_t> rows;
    for (std::size_t r = 0; r < rows_.size(); ++r)
        if (rows_[r].may_drop && row_prices_[r] > 0)
            rows.push_back(r);
    std::sort(rows.begin(), rows.end(), [this](std::size_t a, std::size_t b) {
        return row_prices_[a] != row_prices_[b] ? row_prices_[a] > row_prices_[b] : a < b;
    });
    for (std::size_t i = 0; i < std::min(rows.size(), static_cast<std::size_t>(drops_)); ++i) {
        bound_ -= row_prices_[rows[i]];
        --slope_[rows[i]];
    }
}

bool CoverRelaxation::evaluate() {
    bound_ = settled_;
    slope_.clear();
    price_columns();
    if (!choose_columns())
        return false;
    count_use();
    drop_dearest();
    return true;
}

// Turns towards a better bound; false if there is no way up.
bool CoverRelaxation::turn() {
    heading_.resize(rows_.size(), 0);
    bool flat = true;
    for (std::size_t r = 0; r < rows_.size(); ++r) {
        const bool stuck = row_prices_[r] <= 0 && slope_[r] < 0;
        heading_[r] = stuck ? 0 : slope_[r] * k_heading_unit + heading_[r] * k_heading_kept / 16;
        flat = flat && (stuck || slope_[r] == 0);
    }
    return !flat;
}

void CoverRelaxation::step(std::int64_t length) {
    std::int64_t square = 0;
    for (const auto heading : heading_)
        square += heading * heading;
    if (square == 0)
        return;
    for (std::size_t r = 0; r < rows_.size(); ++r)
        row_prices_[r] = std::max<std::int64_t>(0, row_prices_[r] + length * heading_[r] *
                                                                        k_heading_unit / square);
}

std::optional<std::int64_t> CoverRelaxation::improve(int rounds, std::int64_t target,
                                                     std::int64_t enough, CoverPace& pace) {
    auto best_prices = row_prices_;
    heading_.clear();
    std::int64_t best = std::numeric_limits<std::int64_t>::min();
    for (int round = 0; round < rounds; ++round) {
        if (!evaluate())
            return std::nullopt;
        if (bound_ > best) {
            best = bound_;
            best_prices = row_prices_;
            pace.waited = round == 0 ? pace.waited : 0;
        } else if (++pace.waited >= pace.patience) {
            pace.share = std::max<std::int64_t>(1, pace.share / 2);
            pace.waited = 0;
        }
        if (best >= enough || !turn())
            break;
        // A target far off says nothing of the step.
        const auto near = best + std::max(k_cover_unit, best / 8);
        const auto gap = std::max(std::min(target, near) - bound_, k_cover_unit / 8);
        step(gap * pace.share / k_whole_step);
    }
    row_prices_ = best_prices;
    if (!evaluate())
        return std::nullopt;
    for (std::size_t r = 0; r < rows_.size(); ++r)
        prices_[rows_[r].element] = row_prices_[r];
    return best;
}

CoverOptions CoverRelaxation::by_cost() const {
    auto order = columns_;
    std::stable_sort(order.begin(), order.end(),
                     [](const Column& a, const Column& b) { return a.cost < b.cost; });
    CoverOptions options;
    for (const auto& column : order)
        options.push_back(column.option);
    return options;
}

CoverOptions CoverRelaxation::hopeless(std::int64_t enough) const {
    CoverOptions options;
    for (const auto& column : columns_) {
        // What the bound becomes if it is taken in the place of the one that makes room for it.
        const auto gives_way =
            is_chosen_[column.group] ? columns_[best_[column.group]].cost : dearest_;
        if (bound_ + column.cost - gives_way >= enough)
            options.push_back(column.option);
    }
    return options;
}

} // namespace make
