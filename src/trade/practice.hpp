// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Shop practice: every limit that the rules use, in one editable table. The defaults with their
// sources are rows of the reference tables; a shop's own values override them by name.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "length/length.hpp"

namespace trade {

struct GoodClearance {
    length::Length least;
    length::Length most;
};

// Lengths are diametral unless said otherwise. Shares are in thousandths (850 = 85 %).
struct Practice {
    // 1 head in the counterbore
    length::Length head_clearance;           // least, cutter over head
    length::Length tool_over_head_number;    // handbook tool, number sizes
    length::Length tool_over_head_fraction;  // handbook tool, fractional sizes
    length::Length published_over_head;      // where no table has a counterbore
    length::Length published_over_head_inch; // the same, screws of 1 in and over
    length::Length tool_size_under;          // still tool size so far under the tool
    length::Length recommended_over;         // still recommended so far over the published
    length::Length large_over_published;     // largest cutter: this over the published, or
    std::int64_t large_share_of_head = 0;    // this share of the head, whichever is less
    std::int64_t seat_share = 0;             // largest hole as a share of the smallest head
    // 2 pilot in the hole
    length::Length running_least;          // hole over pilot; a drill's hole counts as the drill
    length::Length running_most;           // to 1/2
    length::Length running_most_over_half; // over 1/2
    length::Length running_most_over_inch; // over 1 in
    GoodClearance good_to_eighth;          // holes to 1/8
    GoodClearance good_to_quarter;         // to 1/4
    GoodClearance good_to_half;            // to 1/2
    GoodClearance good_over_half;
    length::Length pilot_under_least; // a pilot to be made: so far under its hole, at least
    length::Length pilot_under_most;
    // 3 drill
    length::Length size_on_size;  // a drill so little over the screw leaves no play
    length::Length reamed_over;   // an inch hole reamed for a shoulder: so far over it at most
    std::int64_t loose_share = 0; // loose hole over a screw without a clearance row: share
    length::Length loose_over;    // ... or this, whichever is greater
    std::string drill_indexes;    // owned, comma separated; empty: by the catalogue's unit
    // 4 pilot shank in the bore
    length::Length slip_least;
    length::Length slip_most;
    length::Length good_slip_least;
    length::Length good_slip_most;
    // 5 set screw on the flat
    std::int64_t set_screw_point_share = 0; // point diameter as a share of the major diameter
    // 7 depth
    length::Length below_flush;
    length::Length spotface_depth;
    // 8 room and guidance
    std::int64_t guidance_share = 0; // of the pilot diameter in the hole before the teeth touch
    // answers
    std::int64_t closest_share = 0; // largest shortfall that is still listed
    // the job
    length::Length counterbore_over; // a counterbore comes out at most so far over its cutter
    length::Length stop_within;      // a depth stop repeats within this
    std::int64_t ledge_least = 0;    // thickness left under the head: share of the screw
    std::int64_t ledge_usual = 0;    // the same, usual
    std::int64_t wall_share = 0;     // wall round the counterbore: share of the cutter, or
    length::Length wall_least;       // this, whichever is greater
    // how a value is known: limits around it
    length::Length mark_cutter_under, mark_cutter_over;
    length::Length mark_metric_cutter_wear;           // under nominal; over it: z9 of ISO 286-2
    length::Length mark_pilot_under, mark_pilot_over; // its own size, as a decimal
    GoodClearance pilot_under_hole;                   // the hole it names, as a fraction
    length::Length mark_metric_pilot_wear;            // under e8 of ISO 286-2
    length::Length mark_shank_under, mark_shank_over;
    length::Length mark_bore_under, mark_bore_over;
    length::Length rule_within, caliper_within, micrometer_within, pin_gauge_within;
    length::Length test_hole_within, guess_within;
    length::Length unstated_decimal_within, unstated_fraction_within;
};

// A row as listed and edited.
struct PracticeRow {
    std::string name;   // with spaces: `head clearance`
    std::string value;  // as written: `.005 in`, `95 %`, `fraction, number, letter`
    std::string about;  // one line
    std::string source; // or `common practice`
    bool own = false;   // the shop's value, not the default
};

// Reads rows into the struct. Throws error::BadData naming the row for an unknown name, a value of
// the wrong kind, or a name that is missing.
// Where a name comes twice, the shop's own row counts.
[[nodiscard]] Practice read_practice(const std::vector<PracticeRow>& rows);

// A value for a row as it is kept and shown: lengths with their unit (`.005 in`, `1/64 in`,
// `0.08 mm`), shares with one decimal at most (`12.5 %`), good clearances `.001 to .003 in`, drill
// indexes `fraction, number, letter`, and as it is what a work material is taken as. Throws
// error::BadData saying what would do.
std::string check_practice_value(std::string_view name, std::string_view text);

} // namespace trade
