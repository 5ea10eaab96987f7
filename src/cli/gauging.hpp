// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What every way of gauging a cutter shares on the command line: readings with their limits, the
// result printed, and the cutting diameter written to the tool.
#pragma once

#include <optional>
#include <string>

#include "cli/context.hpp"
#include "cli/syntax.hpp"
#include "error/error.hpp"
#include "job/gauge.hpp"
#include "trade/practice.hpp"

namespace cli {

struct GaugeOptions {
    std::string how;
    std::string record; // the tool's number
    bool explain = false;
    bool json = false;
};

void declare_gauge_options(const Syntax& syntax, GaugeOptions& options);

// One use of `gauge`. Needs no catalogue where nothing is recorded.
class Gauging {
  public:
    Gauging(const GaugeOptions& options, Context& context);

    // The limits written with the reading, else those of how it was taken. Throws error::BadData.
    [[nodiscard]] length::Range reading(const std::string& text) const;
    [[nodiscard]] length::MaybeRange maybe_reading(const std::string& text) const; // empty: none
    // An allowance: zero will do. Empty: not known.
    [[nodiscard]] std::optional<length::Length> allowance(const std::string& text) const;
    [[nodiscard]] int flutes(const std::string& text) const;
    [[nodiscard]] length::Unit unit() const { return unit_; }

    // How the cutting diameter is known, for the record, from the reading that it hangs on.
    [[nodiscard]] trade::How how(const std::string& reading) const;

    // Records where that was asked for, then prints. `flutes` are those that the sum took.
    error::ExitCode finish(const job::Gauged& gauged, trade::How how,
                           std::optional<int> flutes) const;

  private:
    void print(const job::Gauged& gauged, std::optional<std::int64_t> recorded) const;

    const GaugeOptions& options_;
    Context& context_;
    trade::Practice practice_;
    length::Unit unit_;
};

} // namespace cli
