// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The pilots that were tried in each body.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "trade/number_set.hpp"
#include "trade/pilot.hpp"

namespace match {

class Trials {
  public:
    explicit Trials(std::vector<trade::Trial> trials);

    // By pilot.
    [[nodiscard]] std::span<const trade::Trial> in_body(std::int64_t body) const;

    // False: the pilot was tried in none.
    [[nodiscard]] bool may_have_pilot(std::int64_t pilot) const { return pilots_.may_have(pilot); }

  private:
    std::vector<trade::Trial> trials_; // by body, pilot
    trade::NumberSet bodies_;          // of the trials
    trade::NumberSet pilots_;
};

// Of the trials in one body, that of a pilot.
[[nodiscard]] std::optional<trade::Tried> how_tried(std::span<const trade::Trial> in_body,
                                                    std::int64_t pilot);

} // namespace match
