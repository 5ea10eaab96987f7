// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is marked on the bodies of a rack, read once: a marking that names a screw says what the
// tool was made for.
#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "trade/number_set.hpp"
#include "trade/rack.hpp"
#include "trade/screw.hpp"

namespace match {

class Markings {
  public:
    // By marking.
    explicit Markings(const std::vector<trade::Marked>& bodies);

    // The bodies whose marking names the screw.
    [[nodiscard]] trade::NumberSet naming(const trade::Screw& screw) const;

  private:
    std::vector<std::pair<std::string, std::vector<std::int64_t>>> bodies_; // by marking, folded
};

// Whether a marking, folded, names the screw: its size with the form of its head; a socket head cap
// screw also by a metric size or a size and pitch alone.
[[nodiscard]] bool names(std::string_view marking, const trade::Screw& screw);

} // namespace match
