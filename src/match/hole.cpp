// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A hole as it is asked for: a published one, a drill, or a size.
#include "error/error.hpp"
#include "match/question.hpp"
#include "trade/dimension.hpp"
#include "trade/size.hpp"
#include "trade/text.hpp"

namespace match {

using trade::DrillKind;
using trade::Feature;
using trade::How;

namespace {

std::optional<trade::Drill> drill_named(const std::string& name, const trade::Tables& tables) {
    for (const auto kind :
         {DrillKind::fraction, DrillKind::number, DrillKind::letter, DrillKind::metric})
        for (auto& drill : tables.drills(kind))
            if (drill.name == name)
                return drill;
    return std::nullopt;
}

// Tables name drills; a size in no index keeps its table's name and diameter.
trade::Drill drill_of(const std::string& name, length::Length diameter,
                      const trade::Tables& tables) {
    if (auto drill = drill_named(name, tables))
        return *drill;
    return {name, DrillKind::metric, diameter};
}

Hole published(const std::string& word, const std::optional<trade::Clearance::Hole>& hole,
               const trade::Screw& screw, const trade::Tables& tables) {
    if (!hole)
        throw error::BadData("hole: no table has a " + word + " hole for this screw: '" +
                                 screw.name + "'",
                             "name a drill or give the hole's size");
    return {HoleKind::drilled, word, drill_of(hole->drill, hole->diameter, tables), {}, false};
}

Hole tapping(const trade::Screw& screw, const trade::Tables& tables) {
    if (!screw.tap)
        throw error::BadData("hole: no table has a tap drill for this screw: '" + screw.name + "'",
                             "name a drill or give the hole's size");
    return {HoleKind::drilled,
            "tap",
            drill_of(screw.tap->drill, screw.tap->diameter, tables),
            {},
            true};
}

// A drill's name, or a bare number that an index of the catalogue's unit calls a drill: `1` is the
// inch drill 1 in an inch catalogue, `9` the drill 9 mm in a metric one.
std::string drill_name(std::string_view text, length::Unit unit) {
    auto name = trade::canonical_drill_name(text);
    const auto number = trade::canonical_pitch(text);
    if (!name.empty() || number.empty())
        return name;
    if (unit == length::Unit::millimetre)
        return number + " mm";
    return text.find('.') == std::string_view::npos ? number : std::string();
}

// A shoulder runs in its hole: no chart gives one, and its thread goes no further.
void refuse_for_shoulder(const std::string& word, const trade::Screw& screw) {
    if (screw.shoulder)
        throw error::BadData("hole: a shoulder is a bearing, no table has its hole: '" + word + "'",
                             "give the hole's size or drill, or leave --hole away to have it "
                             "reamed");
}

Hole measured(std::string_view text, const trade::Practice& practice, length::Unit unit) {
    try {
        const auto size = trade::read_dimension(text, How::caliper, Feature::hole, unit, practice);
        return {HoleKind::measured, std::string(text), {}, size.range, false};
    } catch (const error::BadData&) {
        throw error::BadData("hole: neither a drill nor a size: '" + std::string(text) + "'",
                             "close, normal, loose, tap, a drill (F, #7, 9/32, 7 mm), or a size "
                             "with limits if known (.332 +-.001)");
    }
}

} // namespace

Hole parse_hole(std::string_view text, const trade::Screw& screw, const trade::Tables& tables,
                const trade::Practice& practice, length::Unit unit) {
    const auto word = trade::folded(text);
    if (word == "close" || word == "normal" || word == "loose" || word == "tap")
        refuse_for_shoulder(word, screw);
    if (word == "close")
        return published(word, screw.close, screw, tables);
    if (word == "normal")
        return published(word, screw.normal, screw, tables);
    if (word == "loose")
        return published(word, screw.loose, screw, tables);
    if (word == "tap")
        return tapping(screw, tables);
    if (const auto name = drill_name(text, unit); !name.empty())
        if (auto drill = drill_named(name, tables))
            return {HoleKind::drilled, std::string(text), *drill, {}, false};
    return measured(text, practice, unit);
}

} // namespace match
