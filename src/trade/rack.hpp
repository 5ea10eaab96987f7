// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the matcher asks of a catalogue.
#pragma once

#include <vector>

#include "trade/body.hpp"
#include "trade/pilot.hpp"

namespace trade {

class Rack {
  public:
    virtual ~Rack() = default;

    // All of them, retired and lent ones too, by number.
    [[nodiscard]] virtual std::vector<Body> bodies() const = 0;
    [[nodiscard]] virtual std::vector<Pilot> pilots() const = 0;
    // By pilot, then body. Only those that still count.
    [[nodiscard]] virtual std::vector<Trial> trials() const = 0;
};

} // namespace trade
