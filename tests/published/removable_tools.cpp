// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "removable_tools.hpp"

#include "solid_tools.hpp"
#include "trade/tolerance.hpp"

using length::Length;
using length::Range;

namespace published {

namespace {

constexpr Length k_mm = Length::from_nm(1'000'000);

trade::Dimension of_size(const Range& range) {
    return {"", trade::How::micrometer, range};
}

} // namespace

RemovableTools::RemovableTools(const store::Reference& tables, const trade::Practice& practice,
                               Known known)
    : practice_(practice), known_(known), listed_(tables.published_pilots()) {
    for (const auto& solid : SolidTools(tables, practice).bodies())
        if (solid.cut_dia->text.find("mm") == std::string::npos)
            add_inch(solid);
    for (const auto& pilot : listed_)
        if (pilot.standard == "DIN 1868" && pilot.hole != "tapping")
            add_metric(pilot);
}

// The first band of bores that has the cutter; none is listed for cutters under 3/16.
void RemovableTools::add_inch(const trade::Body& solid) {
    const Length cut = solid.cut_dia->range.hi;
    for (const auto& band : listed_) {
        if (band.standard != "removable, straight pin" || band.cut_dia.listed->lo > cut ||
            band.cut_dia.listed->hi < cut)
            continue;
        const Length bore = band.shank_dia.listed->lo;
        trade::Pilot pilot;
        pilot.pilot_dia = solid.pilot_dia;
        trade::Body body = solid;
        body.pilot_dia.reset();
        // Slips .0003 to .0011 in, both by micrometer.
        const Length within = length::inches_e5(20);
        const Length shank = bore - length::inches_e5(70);
        add(body, pilot, {bore - within, bore + within}, {shank - within, shank + within});
        return;
    }
}

void RemovableTools::add_metric(const trade::PublishedPilot& listed) {
    const auto read = [&](Length size, trade::Feature feature) {
        return trade::read_dimension(length::with_unit(size, length::Unit::millimetre),
                                     trade::How::mark, feature, length::Unit::millimetre,
                                     practice_);
    };
    trade::Body body;
    body.kind = trade::BodyKind::counterbore;
    body.cut_dia = read(listed.cut_dia.listed->lo, trade::Feature::cut_dia);
    body.place = listed.size;
    trade::Pilot pilot;
    pilot.pilot_dia = read(listed.pilot_dia.listed->lo, trade::Feature::pilot_dia);
    add(body, pilot, trade::h8_limits(listed.shank_dia.listed->lo), *listed.shank_dia.limits);
}

// The pilot lies beside its body, in the place of the screw's size.
void RemovableTools::add(trade::Body body, trade::Pilot pilot, Range bore, Range shank) {
    body.number = static_cast<std::int64_t>(bodies_.size()) + 1;
    body.pilot_kind = trade::PilotKind::removable;
    body.retention = trade::Retention::set_screw;
    body.bore = of_size(bore);
    pilot.number = 1000 + body.number;
    pilot.place = body.place;
    if (known_ == Known::tried) {
        trials_.push_back({pilot.number, body.number, trade::Tried::slides_and_holds});
    } else {
        pilot.shank_dia = of_size(shank);
        // The point of the set screw comes to the middle of a flat of 4 mm.
        body.set_screw = "M4";
        body.set_screw_at = of_size(length::exactly(k_mm * 6));
        pilot.shank_length = of_size(length::exactly(k_mm * 12));
        pilot.has_flat = true;
        pilot.flat_at = of_size(length::exactly(k_mm * 4));
        pilot.flat_length = of_size(length::exactly(k_mm * 4));
    }
    bodies_.push_back(std::move(body));
    pilots_.push_back(std::move(pilot));
}

} // namespace published
