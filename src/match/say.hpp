// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Dimensions in the sentences that explain a finding.
#pragma once

#include <string>

#include "length/print.hpp"

namespace match {

// `.437 to .469 in`, or `.437 in`; computed values to .0001 in or .001 mm.
[[nodiscard]] std::string say(const length::Range& range, length::Unit unit);
[[nodiscard]] std::string say(length::Length value, length::Unit unit);
// As `say`, or `not known`.
[[nodiscard]] std::string say(const length::MaybeRange& range, length::Unit unit);

} // namespace match
