// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The report of a match as CSV: one row an answer, sizes in the reader's unit.
#pragma once

#include <string>

#include "match/answer.hpp"

namespace present {

[[nodiscard]] std::string match_csv(const match::Report& report, length::Unit unit);

} // namespace present
