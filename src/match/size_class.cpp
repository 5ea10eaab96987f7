// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/size_class.hpp"

#include <algorithm>
#include <string_view>

namespace match {

using length::Length;

namespace {

const trade::Counterbore* row_of(const trade::Screw& screw, std::string_view kind) {
    for (const auto& row : screw.counterbores)
        if (row.kind == kind)
            return &row;
    return nullptr;
}

// Where nothing else is published, the handbook's tool is the recommendation.
const trade::Counterbore* published_row(const trade::Screw& screw) {
    for (const auto* kind : {"recommended", "spotface", "tool"})
        if (const auto* row = row_of(screw, kind))
            return row;
    return nullptr;
}

const trade::Counterbore* counterbore_of(const Washer& washer) {
    return washer.counterbore ? &*washer.counterbore : nullptr;
}

// A screw of the shop's own may have a diameter and no size.
bool is_large(const trade::Screw& screw) {
    const auto inch = Length::from_nm(length::k_nm_per_inch);
    if (screw.size)
        return screw.size->diameter >= inch;
    return screw.screw_dia && screw.screw_dia->hi >= inch;
}

Length over_head(const trade::Screw& screw, const trade::Practice& practice) {
    const bool large = is_large(screw);
    return large ? practice.published_over_head_inch : practice.published_over_head;
}

} // namespace

SizeTargets size_targets(const trade::Screw& screw, Length head, const Washer* washer,
                         const trade::Practice& practice) {
    SizeTargets targets;
    const auto* row = washer ? counterbore_of(*washer) : published_row(screw);
    targets.published = row ? row->diameter : head + over_head(screw, practice);
    targets.source = row ? row->rule : "shop practice for this head";
    if (screw.is_metric() || (row && row->kind == "tool")) {
        targets.tool = targets.published;
    } else {
        const bool number = screw.size && screw.size->system == trade::SizeSystem::number;
        targets.tool =
            head + (number ? practice.tool_over_head_number : practice.tool_over_head_fraction);
    }
    const auto share = Length::from_nm(head.nm() * practice.large_share_of_head / 1000);
    targets.largest = targets.published + std::min(practice.large_over_published, share);
    return targets;
}

std::optional<SizeClass> size_class(const length::Range& cut_dia, const SizeTargets& targets,
                                    const trade::Practice& practice) {
    const Length twice = cut_dia.lo + cut_dia.hi; // twice the middle: nothing is rounded
    if (twice > targets.largest * 2)
        return std::nullopt;
    if (twice < (targets.tool - practice.tool_size_under) * 2)
        return SizeClass::small;
    if (twice <= targets.tool + targets.published)
        return SizeClass::tool_size;
    if (twice <= (targets.published + practice.recommended_over) * 2)
        return SizeClass::recommended;
    return SizeClass::large;
}

} // namespace match
