// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// All records of a catalogue, for listing and exporting.
#pragma once

#include <vector>

#include "cli/record/records.hpp"
#include "store/tools.hpp"

namespace cli {

// All pilots, each with how it went in the body it is in.
[[nodiscard]] std::vector<record::PilotRecord> pilot_records(const store::File& file);

} // namespace cli
