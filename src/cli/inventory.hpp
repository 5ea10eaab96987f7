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

// All that is known of a tool, for other programs.
template <class Record>
present::Json tool_json(const Record& tool, const record::Columns<Record>& columns) {
    present::Json json = record::json_of(tool, columns);
    json["retired"] = tool.retired ? present::Json(*tool.retired) : present::Json(nullptr);
    json["loan"] = tool.loan ? present::Json(*tool.loan) : present::Json(nullptr);
    return json;
}

} // namespace cli
