// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The report of a match as JSON, format 1; described in docs/json.md.
#pragma once

#include "match/answer.hpp"
#include "present/json.hpp"

namespace present {

// One of the answers of match_json().
[[nodiscard]] Json answer_json(const match::Answer& answer);

[[nodiscard]] Json match_json(const match::Report& report, const trade::Screw& screw);

} // namespace present
