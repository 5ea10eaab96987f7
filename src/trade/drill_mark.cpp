// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "trade/drill_mark.hpp"

#include <fmt/format.h>

#include "error/error.hpp"
#include "trade/drill.hpp"
#include "trade/text.hpp"

namespace trade {

namespace {

[[noreturn]] void refuse(std::string_view why, std::string_view text, const std::string& hint) {
    throw error::BadData(fmt::format("{}: '{}'", why, trimmed(text)), hint);
}

// `x` in a cell is a tick or a slip more often than the drill X.
void refuse_small_letter(std::string_view text) {
    const auto letter = trimmed(text);
    if (letter.size() == 1 && letter.front() >= 'a' && letter.front() <= 'z')
        refuse("a small letter alone is no drill's name", text,
               "a drill is " + number_or_letter_drill(text) + "; otherwise write the size");
}

void refuse_measured(How how, std::string_view text) {
    if (how != How::mark && how != How::unstated)
        refuse(fmt::format("a drill's name is a mark, not known by {}", to_text(how)), text,
               "leave out how it is known, or write the size that was found, as .2548 in");
}

Drill drill_named(const std::string& name, std::string_view text, const Tables& tables) {
    const auto drills = tables.drills(name.front() == '#' ? DrillKind::number : DrillKind::letter);
    for (const auto& drill : drills)
        if (drill.name == name)
            return drill;
    if (drills.empty())
        refuse("no table has such a drill", text, "write the size of the hole");
    refuse("no drill has this name", text,
           fmt::format("they go from {} to {}; a mark can be a fraction too, 17/64, or a size",
                       drills.back().name, drills.front().name));
}

} // namespace

void refuse_more_than_a_drill(std::string_view text) {
    const auto more = text.find_first_of("+-\xC2");
    if (more != std::string_view::npos && !number_or_letter_drill(text.substr(0, more)).empty())
        refuse("a drill's name stands alone, without limits or a pitch", text,
               "a mark is #7 or F; what was measured is a size, with limits if known: "
               ".2548 +-.0002 in");
}

Dimension read_pilot_dia(std::string_view text, How how, length::Unit bare,
                         const Practice& practice, const Tables& tables) {
    const auto name = number_or_letter_drill(text);
    if (name.empty())
        return read_dimension(text, how, Feature::pilot_dia, bare, practice);
    refuse_small_letter(text);
    refuse_measured(how, text);
    return mark_of_hole(text, drill_named(name, text, tables).diameter, practice);
}

} // namespace trade
