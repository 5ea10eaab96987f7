// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The numbered notes of a drawing, and what stands at a dimension: its limits, or the number of the
// note that says how it is taken from the body.
#pragma once

#include "drawing/lettering.hpp"
#include "make/spec.hpp"

namespace make {

using drawing::Lettering;
using drawing::Stack;

class Notes {
  public:
    Notes(const Piece& piece, const Spec& spec, const Lettering& lettering);

    [[nodiscard]] const std::vector<std::string>& lines() const { return lines_; }

    // Limits between `before` and `after`, or `to suit, note 2`.
    [[nodiscard]] Stack words(const Dimension& dimension, std::string_view before = {},
                              std::string_view after = {}) const;
    // The number of the dimension's note, from 1; 0: it has none.
    [[nodiscard]] std::size_t number_of(const Dimension& dimension) const;

  private:
    void add_to_suit(const Spec& spec);
    Lettering lettering_;
    std::vector<std::string> names_; // of the dimensions that the first notes are about
    std::vector<std::string> lines_;
};

} // namespace make
