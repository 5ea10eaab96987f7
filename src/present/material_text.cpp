// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/material_text.hpp"

#include <fmt/format.h>

#include "job/feed.hpp"
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
using trade::Material;
using trade::Matter;

namespace {

std::string speed_text(int least, int most, Unit unit) {
    return figure_value(job::Measure{job::Kind::surface_speed, least * trade::k_metres_in_foot,
                                     most * trade::k_metres_in_foot},
                        unit);
}

std::string pressure_text(int least, int most, Unit unit) {
    return figure_value(
        job::Measure{job::Kind::pressure, static_cast<double>(least), static_cast<double>(most)},
        unit);
}

// `.002 to .005 in`, to .0001 in or 0.001 mm.
std::string feed_text(const trade::Feed& feed, Unit unit) {
    return figure_value(length::Range{feed.least, feed.most}, unit);
}

std::string lines(const std::string& text, std::size_t width) {
    return fmt::format("{}\n", fmt::join(wrapped(text, width), "\n"));
}

// The number alone, for a table that says the unit once.
std::string bare(const std::string& text) {
    return text.substr(0, text.rfind(' '));
}

std::string from(const trade::Origin& origin) {
    const bool more = !origin.confidence.empty() && origin.confidence != origin.source;
    return origin.source +
           (more ? fmt::format(" ({})", trade::how_sure(origin.confidence)) : std::string());
}

// In a word or two.
std::string_view short_word(Matter about) {
    switch (about) {
    case Matter::refused:
        return "not cut here";
    case Matter::dwell:
        return "no dwell";
    case Matter::coolant:
        return "no water";
    default:
        return trade::matter_word(about);
    }
}

std::string short_words(const Material& material) {
    std::string words;
    for (const auto& restriction : material.restrictions)
        words += fmt::format("{}{}", words.empty() ? "" : ", ", short_word(restriction.about));
    return words;
}

// `ft_per_min` or `m_per_min`, `psi` or `mpa`: behind the names of columns.
std::string column(const char* name, const char* inch, const char* metric, Unit unit) {
    return fmt::format("{}_{}", name, unit == Unit::inch ? inch : metric);
}

std::vector<std::string> header(Unit unit) {
    const auto speed = [&](const char* name) {
        return column(name, "ft_per_min", "m_per_min", unit);
    };
    const auto pressure = [&](const char* name) { return column(name, "psi", "mpa", unit); };
    return {"name",
            "condition",
            speed("drill_speed"),
            speed("counterbore_speed_low"),
            speed("counterbore_speed_high"),
            "feed_class",
            "coolant",
            pressure("pressure_limit_low"),
            pressure("pressure_limit_high"),
            "pressure_basis",
            "refused",
            "fire",
            "dwell",
            "coolant_forbidden",
            "self_feed",
            "heat",
            "dust",
            "source",
            "confidence",
            "note"};
}

std::string speed_cell(int feet, Unit unit) {
    return feet == 0 ? std::string() : bare(speed_text(feet, feet, unit));
}

std::string pressure_cell(int megapascals, Unit unit) {
    return megapascals == 0 ? std::string() : bare(pressure_text(megapascals, megapascals, unit));
}

std::string restriction_cell(const Material& material, Matter about) {
    const auto* found = material.restriction(about);
    return found ? found->words : std::string();
}

std::vector<std::string> cells(const Material& material, Unit unit) {
    const auto dwell = restriction_cell(material, Matter::dwell);
    return {material.name,
            material.condition,
            speed_cell(material.drill_speed, unit),
            speed_cell(material.speed_low, unit),
            speed_cell(material.speed_high, unit),
            material.feed_class,
            material.coolant,
            pressure_cell(material.pressure_low_mpa, unit),
            pressure_cell(material.pressure_high_mpa, unit),
            material.pressure_basis,
            restriction_cell(material, Matter::refused),
            restriction_cell(material, Matter::fire),
            dwell.empty() && !material.refused() ? "allowed" : dwell,
            restriction_cell(material, Matter::coolant),
            restriction_cell(material, Matter::self_feed),
            restriction_cell(material, Matter::heat),
            restriction_cell(material, Matter::dust),
            material.origin.source,
            material.origin.confidence,
            material.origin.note};
}

// What it forbids or asks, each with its source; where nothing is said of a dwell it is allowed.
void add_restrictions(Fields& fields, const Material& material) {
    for (const auto& one : material.restrictions) {
        fields.add(std::string(short_word(one.about)), one.words);
        fields.add("  from", from(one.origin));
    }
    if (!material.refused() && material.may_dwell())
        fields.add("dwell", "allowed: one or two turns at depth");
}

void add_feeds(Fields& fields, const Material& material, const std::vector<trade::Feed>& feeds,
               Unit unit) {
    std::string feeds_from;
    for (const auto& feed : feeds) {
        if (feed.feed_class != material.feed_class)
            continue;
        fields.add("  cutter " + length::with_unit(job::cutter_of(feed), unit),
                   feed_text(feed, unit) + " per revolution");
        feeds_from = from(feed.origin);
    }
    fields.add("feeds from", feeds_from + "; in between in proportion");
}

void add_figures(Fields& fields, const Material& material, const std::vector<trade::Feed>& feeds,
                 Unit unit) {
    fields.add("drill", speed_text(material.drill_speed, material.drill_speed, unit));
    fields.add("counterbore", speed_text(material.speed_low, material.speed_high, unit));
    fields.add("speeds from", from(material.origin));
    fields.add("feed", material.feed_class);
    add_feeds(fields, material, feeds, unit);
    fields.add("coolant", material.coolant);
    const bool differ = material.pressure_low_mpa != material.pressure_high_mpa;
    fields.add("limit under a head",
               pressure_text(material.pressure_low_mpa, material.pressure_high_mpa, unit) +
                   (differ ? ", by edition" : ""));
    fields.add("limit from", material.pressure_basis);
}

} // namespace

std::string materials_table(const std::vector<Material>& materials, Unit unit, std::size_t width,
                            const Style& style) {
    Table table({{"material"}, {"counterbore", true}, {"mind"}});
    for (const auto& material : materials)
        table.add({material.name,
                   material.refused()
                       ? "-"
                       : bare(speed_text(material.speed_low, material.speed_high, unit)),
                   short_words(material)});
    return table.text(width, style) +
           lines(fmt::format("Surface speeds in {} for high-speed steel. `counterpart material "
                             "show NAME` says what to mind, feeds, limits, and where from.",
                             unit == Unit::inch ? "ft/min" : "m/min"),
                 width);
}

std::string everyday_table(const std::vector<trade::EverydayMaterial>& everyday, std::size_t width,
                           const Style& style) {
    Table table({{"everyday name"}, {"taken as"}, {"by"}});
    for (const auto& usual : everyday)
        table.add({usual.word, usual.material, usual.own ? "this shop" : "default"});
    return table.text(width, style) +
           lines("`counterpart practice set \"material WORD\" NAME` makes it another.", width);
}

std::vector<std::vector<std::string>> material_cells(const std::vector<Material>& materials,
                                                     Unit unit) {
    std::vector<std::vector<std::string>> rows{header(unit)};
    for (const auto& material : materials)
        rows.push_back(cells(material, unit));
    return rows;
}

std::string material_text(const Material& material, const std::vector<trade::Feed>& feeds,
                          Unit unit, std::size_t width) {
    Fields fields;
    fields.add("material", material.name);
    if (!material.asked_as.empty())
        fields.add("asked as", fmt::format("{}: taken as this; `practice set \"material {}\" "
                                           "NAME` makes it another",
                                           material.asked_as, material.asked_as));
    fields.add("condition", material.condition);
    add_restrictions(fields, material);
    if (!material.refused())
        add_figures(fields, material, feeds, unit);
    fields.add("note", material.origin.note);
    return fields.text(width) +
           lines("Speeds are for high-speed steel cutters. All of it is guidance: the joint's "
                 "designer and local rules decide; see docs/safety.md.",
                 width);
}

} // namespace present
