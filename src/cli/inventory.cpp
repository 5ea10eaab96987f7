// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/inventory.hpp"

#include <map>
#include <utility>

namespace cli {

std::vector<record::PilotRecord> pilot_records(const store::File& file) {
    std::map<std::pair<std::int64_t, std::int64_t>, trade::Tried> tried;
    for (const trade::Trial& trial : store::trials(file))
        tried[{trial.pilot, trial.body}] = trial.how;
    std::vector<record::PilotRecord> records;
    for (const trade::Pilot& pilot : store::pilots(file)) {
        record::PilotRecord& record = records.emplace_back();
        static_cast<trade::Pilot&>(record) = pilot;
        const auto found = pilot.in_body ? tried.find({pilot.number, *pilot.in_body}) : tried.end();
        if (found != tried.end())
            record.tried = found->second;
    }
    return records;
}

} // namespace cli
