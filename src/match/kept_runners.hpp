// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The runners of the questions just asked, for the next ones that ask the same of pilots: screws of
// one size usually share their holes.
#pragma once

#include <memory>
#include <vector>

#include "match/runners.hpp"

namespace match {

class KeptRunners {
  public:
    // All must outlive this; `rack` and `trials` stay as they are.
    KeptRunners(const trade::Rack& rack, const Trials& trials) : rack_(rack), trials_(trials) {}

    [[nodiscard]] const trade::Rack& rack() const { return rack_; }
    [[nodiscard]] const Trials& trials() const { return trials_; }

    [[nodiscard]] std::shared_ptr<const Runners> of(Runners::Which which, const Job& job,
                                                    const Windows& windows, trade::Detail detail);

  private:
    const trade::Rack& rack_;
    const Trials& trials_;
    std::vector<std::shared_ptr<const Runners>> last_; // the latest first
};

} // namespace match
