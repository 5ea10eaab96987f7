// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A rack with the tools of handbook and standard as bodies whose pilots come out.
// Inch: the sizes of the solid tools (solid_tools.hpp) with the bores that such bodies have by
// trade habit, common practice. Metric: DIN 375 cutters with DIN 1868 pilots (1975, from memory;
// bores and shanks as ISO 4207 and ISO 4208).
#pragma once

#include <string>
#include <vector>

#include "store/reference.hpp"
#include "trade/practice.hpp"
#include "trade/rack.hpp"

namespace published {

// How it is known that a pilot goes with its body: somebody put it in, or both were measured.
enum class Known { tried, measured };

class RemovableTools : public trade::Rack {
  public:
    RemovableTools(const store::Reference& tables, const trade::Practice& practice, Known known);
    [[nodiscard]] std::vector<trade::Body> bodies() const override { return bodies_; }
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override { return pilots_; }
    [[nodiscard]] std::vector<trade::Trial> trials() const override { return trials_; }

  private:
    void add_inch(const trade::Body& solid);
    void add_metric(const trade::PublishedPilot& listed);
    void add(trade::Body body, trade::Pilot pilot, length::Range bore, length::Range shank);

    const trade::Practice& practice_;
    Known known_;
    std::vector<trade::PublishedPilot> listed_;
    std::vector<trade::Body> bodies_;
    std::vector<trade::Pilot> pilots_;
    std::vector<trade::Trial> trials_;
};

} // namespace published
