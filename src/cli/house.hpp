// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The house list as questions.
#pragma once

#include <vector>

#include "cli/context.hpp"
#include "match/chart.hpp"
#include "store/lists.hpp"
#include "trade/screw.hpp"

namespace cli {

// The question that a row of the house list asks, for one row after another.
class HouseReader {
  public:
    // Both must outlive this.
    HouseReader(const trade::Practice& practice, Context& context);
    [[nodiscard]] match::Question question(const store::HouseScrew& row) const;
    // The same of a row that stands on the list; an error says so.
    [[nodiscard]] match::Question listed(const store::HouseScrew& row) const;

  private:
    const trade::Practice& practice_;
    Context& context_;
    trade::ScrewFinder screws_;
};

// The whole list, in its order. Throws error::NoSuchRecord when it is empty.
[[nodiscard]] std::vector<match::Asked> house_asked(const trade::Practice& practice,
                                                    Context& context);

// Every screw of the tables, by series, through any hole.
[[nodiscard]] std::vector<match::Asked> listed_asked(Context& context);

} // namespace cli
