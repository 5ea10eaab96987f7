// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The shop's own screws and its house list, column by column.
#include "cli/record/date_cell.hpp"
#include "cli/record/make_column.hpp"
#include "cli/record/records.hpp"

namespace cli::record {

namespace {

using store::HouseScrew;
using trade::Feature;
using trade::OwnScrew;

// The name of a screw, which must be there and must not be a date.
template <class Record>
Column<Record> name_column(std::string Record::*field, const std::string& about) {
    Column<Record> column = MakeColumn<Record>::text("screw", field, about);
    column.placeholder = "SCREW";
    column.read = [field](Record& record, const Cells& cells, const Reading&) {
        const std::string& cell = cells.at("screw");
        if (cell.empty())
            throw error::BadData("no screw is named: ''",
                                 "for instance 5/16-18 socket head cap, or M8 socket head cap");
        refuse_date(cell, SizeKind::screw);
        record.*field = read_text(cell);
    };
    return column;
}

// Rather than a word or the name of a drill.
bool is_length(const std::string& cell, const Reading& reading) {
    try {
        static_cast<void>(length::parse_reading(cell, reading.bare));
        return true;
    } catch (const error::BadData&) {
        return false;
    }
}

Column<HouseScrew> hole_column() {
    Column<HouseScrew> column = MakeColumn<HouseScrew>::text(
        "hole", &HouseScrew::hole, "close, normal, loose, tap, a drill, or a measured size");
    column.placeholder = "HOLE";
    column.read = [](HouseScrew& house, const Cells& cells, const Reading& reading) {
        const std::string& cell = cells.at("hole");
        refuse_date(cell, SizeKind::length);
        house.hole = read_text(cell);
        if (is_length(cell, reading))
            house.hole = with_stored_unit(cell, reading);
    };
    return column;
}

} // namespace

const Columns<OwnScrew>& screw_columns() {
    using Make = MakeColumn<OwnScrew>;
    static const Columns<OwnScrew> columns = {
        name_column(&OwnScrew::name, "what the screw is called"),
        Make::size("head_dia", &OwnScrew::head_dia, Feature::head_dia, "", "head diameter"),
        Make::size("head_height", &OwnScrew::head_height, Feature::head_height, "", "head height"),
        Make::size("screw_dia", &OwnScrew::screw_dia, Feature::screw_dia, "", "screw diameter"),
        Make::text("drive", &OwnScrew::drive, "hex socket, slot, ..."),
        Make::text("drive_size", &OwnScrew::drive_size, "of the key: 7/32, 6 mm"),
        Make::text("note", &OwnScrew::note, "anything else"),
    };
    return columns;
}

const Columns<HouseScrew>& house_columns() {
    using Make = MakeColumn<HouseScrew>;
    static const Columns<HouseScrew> columns = {
        name_column(&HouseScrew::screw, "the screw"),
        hole_column(),
        Make::text("note", &HouseScrew::note, "anything else"),
    };
    return columns;
}

} // namespace cli::record
