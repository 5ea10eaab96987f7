// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The four kinds of records and their columns, in the order of the files.
#pragma once

#include <vector>

#include "cli/record/column.hpp"
#include "store/lists.hpp"
#include "trade/body.hpp"
#include "trade/pilot.hpp"
#include "trade/screw.hpp"

namespace cli::record {

// A pilot with how it went in the body that it is in.
struct PilotRecord : trade::Pilot {
    std::optional<trade::Tried> tried;
};

[[nodiscard]] const Columns<trade::Body>& body_columns();
[[nodiscard]] const Columns<PilotRecord>& pilot_columns();
[[nodiscard]] const Columns<trade::OwnScrew>& screw_columns();
[[nodiscard]] const Columns<store::HouseScrew>& house_columns();

// What cannot be true of one record, whatever else is in the catalogue.
[[nodiscard]] std::vector<Problem> contradictions(const trade::Body& body);
[[nodiscard]] std::vector<Problem> contradictions(const PilotRecord& pilot);

} // namespace cli::record
