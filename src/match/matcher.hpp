// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One rack, for one question after another.
#pragma once

#include "match/answer.hpp"
#include "match/trials.hpp"

namespace match {

class Matcher {
  public:
    // Both must outlive this. Reasons are in `unit`.
    Matcher(const trade::Rack& rack, const Shop& shop, length::Unit unit);

    // As match().
    [[nodiscard]] Report match(const Question& question, std::size_t most) const;

  private:
    const trade::Rack& rack_;
    const Shop& shop_;
    length::Unit unit_;
    Trials trials_;
};

} // namespace match
