// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A removable pilot, column by column.
#include "cli/record/make_column.hpp"
#include "cli/record/records.hpp"
#include "trade/text.hpp"

namespace cli::record {

namespace {

using trade::Feature;
using Make = MakeColumn<PilotRecord>;

// A flat can be known to be absent: `none`.
Column<PilotRecord> flat_at_column() {
    Column<PilotRecord> column = Make::size(
        "flat_at", &PilotRecord::flat_at, Feature::flat_at, "",
        "from the end of the shank to the near end of the flat, 0 if it runs out there; none: "
        "there is no flat");
    const auto size_cell = column.cell;
    const auto read_size_cell = column.read;
    const auto size_json = column.json;
    column.cell = [size_cell](const PilotRecord& pilot, length::Unit stored) {
        return pilot.has_flat == false ? "none" : size_cell(pilot, stored);
    };
    column.read = [read_size_cell](PilotRecord& pilot, const Cells& cells, const Reading& reading) {
        const std::string& cell = cells.at("flat_at");
        if (trade::folded(cell) == "none") {
            pilot.has_flat = false;
            pilot.flat_at = std::nullopt;
            return;
        }
        read_size_cell(pilot, cells, reading);
        pilot.has_flat = pilot.flat_at ? std::optional(true) : std::nullopt;
    };
    column.json = [size_json](const PilotRecord& pilot) {
        return pilot.has_flat == false ? present::Json("none") : size_json(pilot);
    };
    return column;
}

Columns<PilotRecord> make() {
    return {
        Make::number("number", &PilotRecord::number, "its number; else the next one"),
        Make::text("set", &PilotRecord::set, "the inherited set it came with"),
        Make::size("pilot_dia", &PilotRecord::pilot_dia, Feature::pilot_dia, "pilot_how",
                   "pilot diameter: the part that runs in the hole; or the drill it is marked "
                   "with: #7, F"),
        Make::how("pilot_how", &PilotRecord::pilot_dia, "pilot_dia", Feature::pilot_dia,
                  "how it is known: mark, rule, caliper, micrometer, ..."),
        Make::size("pilot_length", &PilotRecord::pilot_length, Feature::pilot_length, "",
                   "length of that part"),
        Make::flag("fluted", &PilotRecord::fluted, "yes or no: is it fluted"),
        Make::size("shank_dia", &PilotRecord::shank_dia, Feature::pilot_shank_dia, "shank_how",
                   "shank diameter: the part that goes in the body"),
        Make::how("shank_how", &PilotRecord::shank_dia, "shank_dia", Feature::pilot_shank_dia,
                  "how it is known"),
        Make::size("shank_length", &PilotRecord::shank_length, Feature::pilot_shank_length, "",
                   "length of the shank"),
        flat_at_column(),
        Make::size("flat_length", &PilotRecord::flat_length, Feature::flat_length, "",
                   "length of the flat"),
        Make::size("flat_depth", &PilotRecord::flat_depth, Feature::flat_depth, "",
                   "depth of the flat"),
        Make::text("material", &PilotRecord::material, "what it is made of"),
        Make::maybe_word<trade::Condition>("condition", &PilotRecord::condition,
                                           trade::parse_condition,
                                           "good, fair, dull, dirty, rough, broken"),
        Make::list("work", &PilotRecord::work, "what it needs before use, separated by ;"),
        Make::count("in_body", &PilotRecord::in_body, k_largest_number,
                    "the number of the body it is in"),
        Make::maybe_word<trade::Tried>(
            "tried", &PilotRecord::tried, trade::parse_tried,
            "how it went in that body: slides and holds, slides, binds, loose, "
            "will not go"),
        Make::text("place", &PilotRecord::place, "where it lives"),
        Make::text("note", &PilotRecord::note, "anything else"),
    };
}

} // namespace

const Columns<PilotRecord>& pilot_columns() {
    static const Columns<PilotRecord> columns = make();
    return columns;
}

} // namespace cli::record
