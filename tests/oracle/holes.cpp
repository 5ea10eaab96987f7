// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Holes and drills; the interpolation of the oversize table is this file's own.
#include "oracle/holes.hpp"

#include <cstdlib>

namespace oracle {

using length::Length;
using length::Range;

namespace {

enum class Column { least, mean, most };

Length column_of(const trade::Oversize& row, Column column) {
    switch (column) {
    case Column::least:
        return row.least;
    case Column::mean:
        return row.mean;
    default:
        return row.most;
    }
}

// On the straight line between two rows, to the nearest nanometre; flat outside the table.
Length oversize(const match::Shop& shop, Length drill, Column column) {
    const std::vector<trade::Oversize>& rows = shop.oversize;
    if (drill <= rows.front().drill) {
        return column_of(rows.front(), column);
    }
    for (std::size_t i = 1; i < rows.size(); ++i) {
        if (drill <= rows[i].drill) {
            const std::int64_t from = column_of(rows[i - 1], column).nm();
            const std::int64_t rise = column_of(rows[i], column).nm() - from;
            const std::int64_t along = (drill - rows[i - 1].drill).nm();
            const std::int64_t span = (rows[i].drill - rows[i - 1].drill).nm();
            const std::int64_t twice = 2 * rise * along;
            const std::int64_t half_up = twice >= 0 ? span : -span;
            return Length::from_nm(from + (twice + half_up) / (2 * span));
        }
    }
    return column_of(rows.back(), column);
}

// Drill diameters up to this one are allowed; none when nothing is known that limits them.
std::optional<Length> largest_drill(const match::Question& question, const match::Shop& shop) {
    const trade::Screw& screw = question.screw;
    if (!screw.screw_dia) {
        return screw.head_dia ? std::optional<Length>(screw.head_dia->hi) : std::nullopt;
    }
    if (screw.loose && !screw.shoulder) {
        return screw.loose->diameter;
    }
    const Length dia = screw.screw_dia->hi;
    const Length by_share = dia * shop.practice.loose_share / 1000;
    return dia + std::max(by_share, shop.practice.loose_over);
}

trade::GoodClearance good_for(const trade::Practice& practice, Length hole) {
    if (hole <= length::sixty_fourths(8)) {
        return practice.good_to_eighth;
    }
    if (hole <= length::sixty_fourths(16)) {
        return practice.good_to_quarter;
    }
    if (hole <= length::sixty_fourths(32)) {
        return practice.good_to_half;
    }
    return practice.good_over_half;
}

} // namespace

Range drilled(const match::Shop& shop, const trade::Drill& drill) {
    return {drill.diameter + oversize(shop, drill.diameter, Column::least),
            drill.diameter + oversize(shop, drill.diameter, Column::most)};
}

std::vector<trade::Drill> drills_for_screw(const match::Question& question,
                                           const match::Shop& shop) {
    const std::optional<Length> largest = largest_drill(question, shop);
    std::vector<trade::Drill> fit;
    for (const trade::Drill& drill : shop.drills) {
        const bool screw_passes =
            !question.screw.screw_dia || drilled(shop, drill).lo >= question.screw.screw_dia->hi;
        const bool too_loose = largest && drill.diameter > *largest;
        if (screw_passes && !too_loose) {
            fit.push_back(drill);
        }
    }
    return fit;
}

HoleChoice given_hole(const match::Question& question, const match::Shop& shop) {
    if (question.hole.kind == match::HoleKind::drilled) {
        return {question.hole.drill, drilled(shop, question.hole.drill)};
    }
    return {std::nullopt, question.hole.measured};
}

int published_rank(const match::Question& question, const std::optional<trade::Drill>& drill) {
    const trade::Screw& screw = question.screw;
    if (!drill || screw.shoulder) {
        return 3;
    }
    if (screw.close && screw.close->diameter == drill->diameter) {
        return 0;
    }
    if (screw.normal && screw.normal->diameter == drill->diameter) {
        return 1;
    }
    if (screw.loose && screw.loose->diameter == drill->diameter) {
        return 2;
    }
    return 3;
}

std::optional<std::int64_t> closeness(const match::Shop& shop, const HoleChoice& hole,
                                      const length::MaybeRange& pilot_dia) {
    if (!hole.range || !pilot_dia) {
        return std::nullopt;
    }
    Length twice_mean_hole = hole.range->lo + hole.range->hi;
    if (hole.drill) {
        const Length drill = hole.drill->diameter;
        twice_mean_hole = (drill + oversize(shop, drill, Column::mean)) * 2;
    }
    const trade::GoodClearance good = good_for(shop.practice, twice_mean_hole / 2);
    const Length twice_clearance = twice_mean_hole - pilot_dia->lo - pilot_dia->hi;
    return std::abs((twice_clearance - good.least - good.most).nm());
}

} // namespace oracle
