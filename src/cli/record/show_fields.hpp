// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is known of a tool, as labelled lines: every dimension as written, how it is known, and the
// limits that this gives.
#pragma once

#include "cli/record/records.hpp"
#include "present/fields.hpp"

namespace cli::record {

// Limits are printed in `unit`.
[[nodiscard]] present::Fields fields_of(const trade::Body& body, length::Unit stored,
                                        length::Unit unit);
[[nodiscard]] present::Fields fields_of(const PilotRecord& pilot, length::Unit stored,
                                        length::Unit unit);

} // namespace cli::record
