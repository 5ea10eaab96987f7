// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Holes and drills; the interpolation of the oversize table is this file's own.
#include "oracle/holes.hpp"

#include <algorithm>
#include <cstdlib>

#include "oracle/iso286.hpp"

namespace oracle {

using length::Length;
using length::Range;

namespace {

// Of the handbook's table: by a straight line between its rows, flat outside.
Length average_most(const match::Shop& shop, Length drill) {
    const std::vector<trade::Oversize>& rows = shop.oversize;
    if (drill <= rows.front().drill) {
        return rows.front().most;
    }
    for (std::size_t i = 1; i < rows.size(); ++i) {
        if (drill <= rows[i].drill) {
            const std::int64_t from = rows[i - 1].most.nm();
            const std::int64_t rise = rows[i].most.nm() - from;
            const std::int64_t along = (drill - rows[i - 1].drill).nm();
            const std::int64_t span = (rows[i].drill - rows[i - 1].drill).nm();
            const std::int64_t twice = 2 * rise * along;
            const std::int64_t half_up = twice >= 0 ? span : -span;
            return Length::from_nm(from + (twice + half_up) / (2 * span));
        }
    }
    return rows.back().most;
}

// Published for drilled holes: by steps, the last of them for all that is larger.
Length published_most(const match::Shop& shop, Length drill) {
    for (const trade::DrilledHole& row : shop.drilled_holes) {
        if (drill <= row.upto) {
            return row.over;
        }
    }
    return shop.drilled_holes.empty() ? Length() : shop.drilled_holes.back().over;
}

bool same(const std::optional<trade::Clearance::Hole>& published, const trade::Drill& drill) {
    return published && published->diameter == drill.diameter;
}

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

length::MaybeRange judged_by(const HoleChoice& hole) {
    return hole.drill ? length::exactly(hole.drill->diameter) : hole.range;
}

Range drilled(const match::Shop& shop, const trade::Drill& drill) {
    const Length most =
        std::max(average_most(shop, drill.diameter), published_most(shop, drill.diameter));
    return {drill.diameter, drill.diameter + most};
}

std::vector<trade::Drill> drills_for_screw(const match::Question& question,
                                           const match::Shop& shop) {
    const std::optional<Length> largest = largest_drill(question, shop);
    const length::MaybeRange screw = question.screw.screw_dia;
    std::vector<trade::Drill> fit;
    for (const trade::Drill& drill : shop.drills) {
        const bool under_screw = screw && drill.diameter < screw->hi;
        const bool too_loose = largest && drill.diameter > *largest;
        if (!under_screw && !too_loose) {
            fit.push_back(drill);
        }
    }
    return fit;
}

std::optional<HoleChoice> reamed_hole(const match::Question& question, const match::Shop& shop) {
    const trade::Screw& screw = question.screw;
    if (!screw.shoulder || !screw.size) {
        return std::nullopt;
    }
    const Length least = screw.size->diameter;
    const Length over = is_metric(screw) ? grades_of(least).it8 : shop.practice.reamed_over;
    return HoleChoice{std::nullopt, Range{least, least + over}, true};
}

std::vector<HoleChoice> holes_to_choose(const match::Question& question, const match::Shop& shop) {
    if (const std::optional<HoleChoice> reamed = reamed_hole(question, shop)) {
        return {*reamed};
    }
    std::vector<HoleChoice> holes;
    for (const trade::Drill& drill : drills_for_screw(question, shop)) {
        holes.push_back({drill, drilled(shop, drill), false});
    }
    return holes;
}

HoleChoice given_hole(const match::Question& question, const match::Shop& shop) {
    if (question.hole.kind == match::HoleKind::drilled) {
        return {question.hole.drill, drilled(shop, question.hole.drill), false};
    }
    return {std::nullopt, question.hole.measured, false};
}

HoleClass hole_class(const match::Question& question, const match::Shop& shop,
                     const HoleChoice& hole) {
    const trade::Screw& screw = question.screw;
    if (hole.reamed) {
        return HoleClass::close;
    }
    if (!hole.drill) {
        return HoleClass::none;
    }
    if (!screw.shoulder && same(screw.close, *hole.drill)) {
        return HoleClass::close;
    }
    if (!screw.shoulder && same(screw.normal, *hole.drill)) {
        return HoleClass::normal;
    }
    if (!screw.shoulder && same(screw.loose, *hole.drill)) {
        return HoleClass::loose;
    }
    const bool no_play =
        screw.screw_dia && hole.drill->diameter - screw.screw_dia->hi < shop.practice.size_on_size;
    return no_play ? HoleClass::size_on_size : HoleClass::other;
}

std::optional<std::int64_t> closeness(const match::Shop& shop, const HoleChoice& hole,
                                      const length::MaybeRange& pilot_dia) {
    const length::MaybeRange size = judged_by(hole);
    if (!size || !pilot_dia) {
        return std::nullopt;
    }
    const trade::GoodClearance good = good_for(shop.practice, size->hi);
    const Length twice_clearance = size->lo + size->hi - pilot_dia->lo - pilot_dia->hi;
    return std::abs((twice_clearance - good.least - good.most).nm());
}

} // namespace oracle
