// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A body, column by column.
#include "cli/record/date_cell.hpp"
#include "cli/record/make_column.hpp"
#include "cli/record/records.hpp"
#include "trade/size.hpp"

namespace cli::record {

namespace {

using trade::Body;
using trade::Feature;
using Make = MakeColumn<Body>;

Column<Body> set_screw_column() {
    Column<Body> column =
        Make::text("set_screw", &Body::set_screw, "its set screw: #8-32, M5, ...");
    column.placeholder = "SIZE";
    column.read = [](Body& body, const Cells& cells, const Reading&) {
        const std::string& cell = cells.at("set_screw");
        refuse_date(cell, SizeKind::screw);
        if (!cell.empty())
            static_cast<void>(trade::parse_set_screw(cell));
        body.set_screw = cell;
    };
    return column;
}

Columns<Body> make() {
    return {
        Make::number("number", &Body::number, "its number; else the next one"),
        Make::text("set", &Body::set, "the inherited set it came with"),
        Make::word("kind", &Body::kind, trade::parse_body_kind,
                   "counterbore, spotfacer, back spotfacer, other, unknown"),
        Make::size("cut_dia", &Body::cut_dia, Feature::cut_dia, "cut_how", "cutting diameter"),
        Make::how("cut_how", &Body::cut_dia, "cut_dia", Feature::cut_dia,
                  "how it is known: mark, rule, caliper, micrometer, ..."),
        Make::count("flutes", &Body::flutes, k_most_flutes, "how many cutting edges"),
        Make::word("pilot_kind", &Body::pilot_kind, trade::parse_pilot_kind,
                   "integral, removable, none, unknown"),
        Make::size("pilot_dia", &Body::pilot_dia, Feature::pilot_dia, "pilot_how",
                   "diameter of an integral pilot, or the drill it is marked with: #7, F"),
        Make::how("pilot_how", &Body::pilot_dia, "pilot_dia", Feature::pilot_dia,
                  "how it is known"),
        Make::size("pilot_length", &Body::pilot_length, Feature::pilot_length, "",
                   "length of an integral pilot"),
        Make::flag("fluted", &Body::fluted, "yes or no: is the integral pilot fluted"),
        Make::size("bore", &Body::bore, Feature::bore, "bore_how",
                   "diameter of the bore that takes a pilot's shank"),
        Make::how("bore_how", &Body::bore, "bore", Feature::bore, "how it is known"),
        Make::size("bore_depth", &Body::bore_depth, Feature::bore_depth, "", "depth of the bore"),
        Make::maybe_word("retention", &Body::retention, trade::parse_retention,
                         "what holds the pilot: set screw, threaded, detent, cross pin, "
                         "sleeve, other"),
        set_screw_column(),
        Make::size("set_screw_at", &Body::set_screw_at, Feature::set_screw_at, "",
                   "from the mouth of the bore to the set screw's axis"),
        Make::size("reach", &Body::reach, Feature::reach, "", "how deep it can cut"),
        Make::size("shank_dia", &Body::shank_dia, Feature::shank_dia, "", "shank diameter"),
        Make::text("shank_kind", &Body::shank_kind, "straight, Morse 2, ..."),
        Make::text("material", &Body::material, "what it is made of"),
        Make::maybe_word("condition", &Body::condition, trade::parse_condition,
                         "good, fair, dull, dirty, rough, broken"),
        Make::list("work", &Body::work, "what it needs before use, separated by ;"),
        Make::text("marking", &Body::marking, "what is marked on it"),
        Make::text("place", &Body::place, "where it lives"),
        Make::text("note", &Body::note, "anything else"),
    };
}

} // namespace

const Columns<Body>& body_columns() {
    static const Columns<Body> columns = make();
    return columns;
}

} // namespace cli::record
