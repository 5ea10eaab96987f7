// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Which tools `list` shows.
#pragma once

#include <optional>
#include <string>

#include "cli/record/records.hpp"
#include "cli/syntax.hpp"
#include "length/range.hpp"

namespace cli {

// As given on the command line; empty: any.
struct FilterOptions {
    std::string set, place, kind, condition;
    std::string cut, pilot, bore, shank; // spans
    bool work = false;
    bool unknown = false;
    bool retired = false;
    bool all = false;
};

void declare_filter(const Syntax& syntax, FilterOptions& options);

class Filter {
  public:
    // Spans are read with bare numbers in `bare`. Throws error::BadData, error::UsageError.
    Filter(const FilterOptions& options, length::Unit bare);

    [[nodiscard]] bool wants(const trade::Body& body) const;
    [[nodiscard]] bool wants(const record::PilotRecord& pilot) const;
    // Nothing was asked that only a body, or only a pilot, can have.
    [[nodiscard]] bool asks_of_bodies() const { return cut_ || bore_ || kind_; }
    [[nodiscard]] bool asks_of_pilots() const { return shank_.has_value(); }

  private:
    template <class Record>
    [[nodiscard]] bool wants_common(const Record& record) const;

    FilterOptions options_;
    length::MaybeRange cut_, pilot_, bore_, shank_;
    std::optional<trade::BodyKind> kind_;
    std::optional<trade::Condition> condition_;
};

// The columns that the fit rules need and that are not known, as words: `reach, bore`.
[[nodiscard]] std::string unknowns(const trade::Body& body);
[[nodiscard]] std::string unknowns(const trade::Pilot& pilot);

} // namespace cli
