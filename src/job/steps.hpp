// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tick list that goes to the machine, and the usual cautions.
#pragma once

#include <string>
#include <vector>

#include "match/answer.hpp"
#include "trade/body.hpp"
#include "trade/tables.hpp"

namespace job {

// In the order of work, sizes in `unit`. `key` is the size of the set screw's key where one is
// known, else empty; `edge` that to which the hole's edge is broken.
[[nodiscard]] std::vector<std::string>
steps_for(const match::Question& question, const match::Answer& answer, const trade::Body& body,
          const std::string& key, const std::optional<length::Length>& edge, length::Unit unit);

// What the material forbids or asks, the gravest first, then the usual: common practice. Local
// rules and the people responsible come first.
[[nodiscard]] std::vector<std::string> cautions(const std::optional<trade::Material>& material);

} // namespace job
