// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The make-list for a person, and as CSV.
#pragma once

#include <string>

#include "make/list.hpp"
#include "make/stock.hpp"
#include "present/style.hpp"

namespace present {

// What to settle first, the pieces, the stock, what cannot be met.
[[nodiscard]] std::string make_text(const make::MakeList& list,
                                    const std::vector<make::Spec>& specs,
                                    const std::vector<make::BarPlan>& bars, length::Unit unit,
                                    const Style& style, std::size_t width);

// One row a piece.
[[nodiscard]] std::string make_csv(const make::MakeList& list, const std::vector<make::Spec>& specs,
                                   length::Unit unit);

} // namespace present
