// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/material_text.hpp"

#include <fmt/format.h>

#include "job/figure.hpp"
#include "length/print.hpp"
#include "present/fields.hpp"
#include "present/figure_text.hpp"
#include "present/table.hpp"
#include "present/text.hpp"
#include "trade/conversion.hpp"
#include "trade/sureness.hpp"

namespace present {

using length::Length;
using length::Unit;

namespace {

std::string speed_text(int least, int most, Unit unit) {
    return figure_value(job::Measure{job::Kind::surface_speed, least * trade::k_metres_in_foot,
                                     most * trade::k_metres_in_foot},
                        unit);
}

std::string pressure_text(const trade::Material& material, Unit unit) {
    const double limit = material.pressure_limit_mpa;
    return figure_value(job::Measure{job::Kind::pressure, limit, limit}, unit);
}

// `.002 to .005 in`, to .0001 in or 0.001 mm.
std::string feed_text(const trade::Feed& feed, Unit unit) {
    return figure_value(length::Range{feed.least, feed.most}, unit);
}

std::string cutter_text(const trade::Feed& feed, Unit unit) {
    if (feed.upto)
        return "cutter to " + length::with_unit(*feed.upto, unit);
    return feed.above ? "cutter over " + length::with_unit(*feed.above, unit) : "every cutter";
}

std::string lines(const std::string& text, std::size_t width) {
    return fmt::format("{}\n", fmt::join(wrapped(text, width), "\n"));
}

// The number alone, for a table that says the unit once.
std::string bare(const std::string& text) {
    return text.substr(0, text.rfind(' '));
}

std::string from(const trade::Origin& origin) {
    return origin.source + (origin.confidence.empty()
                                ? std::string()
                                : fmt::format(" ({})", trade::how_sure(origin.confidence)));
}

} // namespace

std::string materials_table(const std::vector<trade::Material>& materials, Unit unit,
                            std::size_t width, const Style& style) {
    Table table({{"material"},
                 {"drill", true},
                 {"counterbore", true},
                 {"feed"},
                 {"limit", true},
                 {"how sure"}});
    for (const auto& material : materials)
        table.add({material.name,
                   bare(speed_text(material.drill_speed, material.drill_speed, unit)),
                   bare(speed_text(material.speed_low, material.speed_high, unit)),
                   material.feed_class, bare(pressure_text(material, unit)),
                   std::string(trade::how_sure_shortly(material.origin.confidence))});
    const bool inch = unit == Unit::inch;
    return table.text(width, style) +
           lines(fmt::format("Speeds in {} for high-speed steel; limit of pressure under a head in "
                             "{}. `counterpart material show NAME` says where from.",
                             inch ? "ft/min" : "m/min", inch ? "psi" : "MPa"),
                 width);
}

std::vector<std::vector<std::string>> material_cells(const std::vector<trade::Material>& materials,
                                                     Unit unit) {
    std::vector<std::vector<std::string>> rows{
        {"name", "condition", "drill_speed", "counterbore_speed", "feed_class", "coolant",
         "pressure_limit", "pressure_basis", "source", "confidence", "note"}};
    for (const auto& material : materials)
        rows.push_back({material.name, material.condition,
                        speed_text(material.drill_speed, material.drill_speed, unit),
                        speed_text(material.speed_low, material.speed_high, unit),
                        material.feed_class, material.coolant, pressure_text(material, unit),
                        material.pressure_basis, material.origin.source, material.origin.confidence,
                        material.origin.note});
    return rows;
}

std::string material_text(const trade::Material& material, const std::vector<trade::Feed>& feeds,
                          Unit unit, std::size_t width) {
    Fields fields;
    fields.add("material", material.name);
    fields.add("condition", material.condition);
    fields.add("drill", speed_text(material.drill_speed, material.drill_speed, unit));
    fields.add("counterbore", speed_text(material.speed_low, material.speed_high, unit));
    fields.add("speeds from", from(material.origin));
    fields.add("feed", material.feed_class);
    std::string feeds_from;
    for (const auto& feed : feeds) {
        if (feed.feed_class != material.feed_class)
            continue;
        fields.add("  " + cutter_text(feed, unit), feed_text(feed, unit) + " a turn");
        feeds_from = from(feed.origin);
    }
    fields.add("feeds from", feeds_from);
    fields.add("coolant", material.coolant);
    fields.add("under a head", pressure_text(material, unit) + " at most");
    fields.add("limit from", material.pressure_basis);
    fields.add("note", material.origin.note);
    return fields.text(width) +
           lines("Speeds are for high-speed steel cutters. All of it is guidance: the joint's "
                 "designer and local rules decide; see docs/safety.md.",
                 width);
}

} // namespace present
