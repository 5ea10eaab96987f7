// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// From a cell to a range. A table says what each feature is called, which sizes it can have and
// whose marks it carries.
#include "trade/dimension.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>

#include "error/error.hpp"
#include "length/print.hpp"
#include "trade/text.hpp"
#include "trade/tolerance.hpp"

namespace trade {

using length::Length;
using length::Range;
using length::thousandths;
using length::Unit;

namespace {

enum class Mark { none, cutter, pilot, shank, bore };

struct FeatureRow {
    Feature feature;
    std::string_view name;
    Length least; // plausible nominal sizes: generous, but they catch a slipped point or unit
    Length most;
    Mark mark;
};

constexpr std::array<FeatureRow, 18> k_features{{
    {Feature::cut_dia, "cutting diameter", thousandths(30), thousandths(6000), Mark::cutter},
    {Feature::pilot_dia, "pilot diameter", thousandths(20), thousandths(6000), Mark::pilot},
    {Feature::pilot_length, "pilot length", thousandths(10), thousandths(12000), Mark::none},
    {Feature::bore, "bore", thousandths(20), thousandths(3000), Mark::bore},
    {Feature::bore_depth, "bore depth", thousandths(20), thousandths(12000), Mark::none},
    {Feature::pilot_shank_dia, "pilot shank", thousandths(20), thousandths(3000), Mark::shank},
    {Feature::pilot_shank_length, "pilot shank length", thousandths(20), thousandths(12000),
     Mark::none},
    {Feature::flat_at, "flat from the end", thousandths(1), thousandths(12000), Mark::none},
    {Feature::flat_length, "flat length", thousandths(5), thousandths(6000), Mark::none},
    {Feature::flat_depth, "flat depth", thousandths(1), thousandths(1000), Mark::none},
    {Feature::set_screw_at, "set screw from the mouth", thousandths(20), thousandths(12000),
     Mark::none},
    {Feature::reach, "reach", thousandths(10), thousandths(24000), Mark::none},
    {Feature::shank_dia, "shank diameter", thousandths(20), thousandths(4000), Mark::none},
    {Feature::head_dia, "head diameter", thousandths(20), thousandths(6000), Mark::none},
    {Feature::head_height, "head height", thousandths(5), thousandths(4000), Mark::none},
    {Feature::screw_dia, "screw diameter", thousandths(10), thousandths(6000), Mark::none},
    {Feature::hole, "hole", thousandths(5), thousandths(6000), Mark::none},
    {Feature::thickness, "thickness", thousandths(1), thousandths(120000), Mark::none},
}};

constexpr bool in_order() {
    for (std::size_t i = 0; i < k_features.size(); ++i)
        if (k_features[i].feature != static_cast<Feature>(i))
            return false;
    return true;
}
static_assert(in_order(), "k_features follows the order of Feature");

const FeatureRow& row_of(Feature feature) {
    return k_features.at(static_cast<std::size_t>(feature));
}

constexpr Length k_least = length::micrometres(1);

Range around(Length value, Length under, Length over) {
    return {std::max(value - under, k_least), value + over};
}

// A plain metric size is one that a drill index has, to a tenth of a millimetre.
bool names_metric_hole(const length::Written& written) {
    return written.unit == Unit::millimetre &&
           written.value.nm() % length::micrometres(100).nm() == 0;
}

Range under_hole(Length hole, const Practice& practice) {
    const auto& under = practice.pilot_under_hole;
    return {std::max(hole - under.most, k_least), std::max(hole - under.least, k_least)};
}

// A fraction, or a plain metric size, names the hole that the pilot was made to run in; a decimal
// is the pilot's own size.
Range pilot_mark_limits(const length::Written& written, const Practice& practice) {
    const auto value = written.value;
    if (written.fraction)
        return under_hole(value, practice);
    if (names_metric_hole(written)) {
        const auto made = e8_limits(value);
        return {std::max(made.lo - practice.mark_metric_pilot_wear, k_least), made.hi};
    }
    return around(value, practice.mark_pilot_under, practice.mark_pilot_over);
}

Range mark_limits(const length::Written& written, Mark mark, const Practice& practice) {
    const auto value = written.value;
    switch (mark) {
    case Mark::cutter:
        if (written.unit == Unit::millimetre && !written.fraction)
            return around(value, practice.mark_metric_cutter_wear, z9_over(value));
        return around(value, practice.mark_cutter_under, practice.mark_cutter_over);
    case Mark::pilot:
        return pilot_mark_limits(written, practice);
    case Mark::shank:
        return around(value, practice.mark_shank_under, practice.mark_shank_over);
    case Mark::bore:
        return around(value, practice.mark_bore_under, practice.mark_bore_over);
    case Mark::none:
        break;
    }
    const auto within =
        written.fraction ? practice.unstated_fraction_within : practice.unstated_decimal_within;
    return around(value, within, within);
}

// Which marks count: those of the feature for a mark, and for a fraction that nobody explained.
Mark mark_for(const length::Written& written, How how, Feature feature) {
    const bool as_mark = how == How::mark || written.fraction;
    return as_mark ? row_of(feature).mark : Mark::none;
}

void check_plausible(std::string_view text, Length nominal, Feature feature, Unit unit) {
    const auto& row = row_of(feature);
    if (nominal >= row.least && nominal <= row.most)
        return;
    throw error::BadData(
        fmt::format("{}: {}: '{}'", row.name,
                    nominal < row.least ? "too small to be true" : "too large to be true", text),
        fmt::format("from {} to {}; was another unit meant?", length::with_unit(row.least, unit),
                    length::with_unit(row.most, unit)));
}

// Of all features a flat alone may be no distance away: it starts at the very end of the shank.
bool is_zero(std::string_view cell, Unit bare) {
    const auto reading = length::parse_reading_or_zero(cell, bare);
    return reading.nominal.value == Length();
}

} // namespace

std::string_view to_text(Feature feature) {
    return row_of(feature).name;
}

Range limits_of(const length::Written& written, How how, Feature feature,
                const Practice& practice) {
    const auto evenly = [&](Length within) { return around(written.value, within, within); };
    switch (how) {
    case How::rule:
        return evenly(practice.rule_within);
    case How::caliper:
        return evenly(practice.caliper_within);
    case How::micrometer:
        return evenly(practice.micrometer_within);
    case How::pin_gauge:
        return evenly(practice.pin_gauge_within);
    case How::test_hole:
        return evenly(practice.test_hole_within);
    case How::guess:
        return evenly(practice.guess_within);
    case How::mark:
    case How::unstated:
        break;
    }
    return mark_limits(written, mark_for(written, how, feature), practice);
}

Dimension mark_of_hole(std::string_view text, Length hole, const Practice& practice) {
    const auto cell = trimmed(text);
    check_plausible(cell, hole, Feature::pilot_dia, Unit::inch);
    return {std::string(cell), How::mark, under_hole(hole, practice)};
}

Dimension read_dimension(std::string_view text, How how, Feature feature, Unit bare,
                         const Practice& practice) {
    const auto cell = trimmed(text);
    if (feature == Feature::flat_at && is_zero(cell, bare))
        return {std::string(cell), how, length::exactly(Length())};
    const auto reading = length::parse_reading(cell, bare);
    check_plausible(cell, reading.nominal.value, feature, bare);
    return {std::string(cell), how,
            reading.limits ? *reading.limits : limits_of(reading.nominal, how, feature, practice)};
}

} // namespace trade
