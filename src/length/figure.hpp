// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One number with perhaps a unit, as it stands in a text: the part of reading lengths that plain
// values and limits share. Only src/length includes this.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "length/length.hpp"

namespace length {

// Digits as written; what they are worth waits for the unit, which a neighbour may supply.
struct Figure {
    std::string_view whole;     // before the point, or before the fraction
    std::string_view decimals;  // after the point
    std::string_view numerator; // of a fraction, else empty
    std::string_view denominator;
    std::optional<Unit> unit; // as said; a fraction is in inches
    bool unit_said = false;

    [[nodiscard]] bool fraction() const { return !denominator.empty(); }
};

// Reads figures, signs and words off the front of a text, passing over blanks.
class Scanner {
  public:
    explicit Scanner(std::string_view text) : text_(text) {}

    [[nodiscard]] bool at_end();
    // Takes one of these if it comes next. Words are ASCII and match in either case.
    bool take(std::string_view token);
    // Takes a figure with its unit. Throws error::BadData saying why there is none.
    Figure take_figure();
    // Throws error::BadData with the whole text as the offending value.
    [[noreturn]] void refuse(std::string_view why) const;
    // Throws error::BadData if anything is left, saying what it looks like.
    void expect_end();

  private:
    void skip_blanks();
    [[nodiscard]] std::string_view rest() const { return text_.substr(at_); }
    std::string_view take_digits();
    bool take_fraction_after(Figure& figure);
    void refuse_what_is_no_figure() const;
    void refuse_what_follows_digits() const;
    void take_unit(Figure& figure);

    std::string_view text_;
    std::size_t at_ = 0;
};

// The figure in nanometres. Throws error::BadData, with `text` as the offending value, for a
// fraction that no rule carries, a value finer than the unit's grid, or one over 10 m.
[[nodiscard]] Length value_of(const Figure& figure, Unit unit, std::string_view text);

// `length: why: 'text'` with a hint that says what would do.
[[noreturn]] void refuse_length(std::string_view why, std::string_view text);

} // namespace length
