// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One new tool into the catalogue: what may be entered, and entering it.
#pragma once

#include <cstdint>
#include <vector>

#include "cli/record/records.hpp"
#include "store/change.hpp"

namespace cli::record {

// What is wrong with a tool as a new one of this catalogue.
[[nodiscard]] std::vector<Problem> problems_of(const trade::Body& body, const store::File& file);
[[nodiscard]] std::vector<Problem> problems_of(const PilotRecord& pilot, const store::File& file);

// Adds it, with how it was tried; returns its number. Throws error::BadData for a number that was
// given out before.
std::int64_t add_tool(store::Change& change, const trade::Body& body);
std::int64_t add_tool(store::Change& change, const PilotRecord& pilot);

} // namespace cli::record
