// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Reading pieces off the front of a line: figures, sizes, words.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "cli/intake/items.hpp"

namespace cli::intake {

class Scan {
  public:
    explicit Scan(std::string_view line) : line_(line) {}

    [[nodiscard]] bool at_end() const { return at_ == line_.size(); }
    [[nodiscard]] std::size_t at() const { return at_; }
    [[nodiscard]] std::string_view rest() const { return line_.substr(at_); }
    void go(std::size_t count) { at_ += count; }

    void skip_blanks();
    void skip_separators(); // blanks, commas, semicolons

    // A size stands here: a digit, a point with a digit, or `go` with one.
    [[nodiscard]] bool at_size() const;
    // Throws LineError.
    [[nodiscard]] Size take_size();
    // A drill's name stands here, such as a pilot is marked with: `drill F`, `drill #7`; where the
    // size of a pilot may be due `#7` alone. A letter alone could be a word or a place.
    [[nodiscard]] bool at_drill(bool pilot_due) const;
    // Throws LineError for the word `drill` without a name.
    [[nodiscard]] Size take_drill();
    // Passes an x that has a size or a drill's name after it. Throws LineError for one that has
    // none.
    bool take_times();
    // Whole number. Empty when there is none.
    std::string take_digits();
    // A screw's size: `#8-32`, `M5x0.8`, `1/4-28`. Empty when none stands here.
    std::string take_screw();
    // To a semicolon or the end, without blanks around it.
    std::string take_text();
    std::string take_rest(); // to the end
    // A place or the name of a set: to a number, or to the next word that a line knows; what
    // follows a comma still belongs to it, and quotes hold any words. Throws LineError for a quote
    // that does not end.
    std::string take_phrase();

  private:
    [[nodiscard]] char here(std::size_t ahead = 0) const {
        return at_ + ahead < line_.size() ? line_[at_ + ahead] : '\0';
    }
    [[nodiscard]] bool at_drill_number() const;
    Size take_figure();
    std::string take_unit();
    std::string take_limits();
    std::string take_gauge_end();
    std::string take_quoted();
    bool take_fraction(std::string& text);
    std::string_view chunk() const;

    std::string_view line_;
    std::size_t at_ = 0;
};

} // namespace cli::intake
