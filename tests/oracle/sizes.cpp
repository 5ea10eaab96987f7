// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Heads, depths and size classes.
#include "oracle/sizes.hpp"

#include <algorithm>

namespace oracle {

using length::Length;

namespace {

bool washer_is_larger(const match::Question& question) {
    return question.washer && question.screw.head_dia &&
           question.washer->outside_dia.hi > question.screw.head_dia->hi;
}

bool has_system(const trade::Screw& screw, trade::SizeSystem system) {
    return screw.size && screw.size->system == system;
}

std::optional<Length> din_974_1_row(const trade::Screw& screw) {
    for (const trade::Counterbore& row : screw.counterbores) {
        if (row.rule.starts_with("DIN 974-1")) {
            return row.diameter;
        }
    }
    return std::nullopt;
}

std::optional<Length> recommended_row(const trade::Screw& screw) {
    for (const trade::Counterbore& row : screw.counterbores) {
        if (row.kind == "recommended" || row.kind == "spotface") {
            return row.diameter;
        }
    }
    return std::nullopt;
}

// Where no table has a row for what goes in.
Length over_head(const match::Question& question, const match::Shop& shop, Length head) {
    const auto& size = question.screw.size;
    const bool large = size && size->diameter >= length::sixty_fourths(64);
    return head +
           (large ? shop.practice.published_over_head_inch : shop.practice.published_over_head);
}

Length published(const match::Question& question, const match::Shop& shop, Length head) {
    std::optional<Length> row;
    if (!washer_is_larger(question)) {
        if (has_system(question.screw, trade::SizeSystem::metric)) {
            row = din_974_1_row(question.screw);
        }
        if (!row) {
            row = recommended_row(question.screw);
        }
    }
    return row.value_or(over_head(question, shop, head));
}

} // namespace

length::MaybeRange what_goes_in(const match::Question& question) {
    length::MaybeRange head = question.screw.head_dia;
    if (head && question.washer) {
        head->lo = std::max(head->lo, question.washer->outside_dia.lo);
        head->hi = std::max(head->hi, question.washer->outside_dia.hi);
    }
    return head;
}

std::optional<Length> depth_to_cut(const match::Question& question, const match::Shop& shop) {
    Length depth = question.below.value_or(shop.practice.below_flush);
    if (question.washer) {
        if (!question.washer->thickness) {
            return std::nullopt;
        }
        depth = depth + question.washer->thickness->hi;
    }
    if (question.screw.hex) {
        return depth + shop.practice.spotface_depth;
    }
    if (!question.screw.head_height) {
        return std::nullopt;
    }
    return depth + question.screw.head_height->hi;
}

std::optional<Targets> targets(const match::Question& question, const match::Shop& shop) {
    const length::MaybeRange head = what_goes_in(question);
    if (!head) {
        return std::nullopt;
    }
    Targets found;
    found.published = published(question, shop, head->hi);
    if (has_system(question.screw, trade::SizeSystem::metric)) {
        found.tool = found.published;
    } else if (has_system(question.screw, trade::SizeSystem::number)) {
        found.tool = head->hi + shop.practice.tool_over_head_number;
    } else {
        found.tool = head->hi + shop.practice.tool_over_head_fraction;
    }
    const Length part_of_head = head->hi * shop.practice.large_share_of_head / 1000;
    found.limit = found.published + std::min(shop.practice.large_over_published, part_of_head);
    return found;
}

std::optional<match::SizeClass> size_class(const match::Question& question, const match::Shop& shop,
                                           const length::MaybeRange& cut_dia) {
    const std::optional<Targets> target = targets(question, shop);
    if (!target || !cut_dia) {
        return std::nullopt;
    }
    const Length size = middle(*cut_dia);
    if (size > target->limit) {
        return std::nullopt;
    }
    if (size < target->tool - shop.practice.tool_size_under) {
        return match::SizeClass::small;
    }
    if (size <= middle({target->tool, target->published})) {
        return match::SizeClass::tool_size;
    }
    if (size <= target->published + shop.practice.recommended_over) {
        return match::SizeClass::recommended;
    }
    return match::SizeClass::large;
}

Length middle(const length::Range& range) {
    return (range.lo + range.hi) / 2;
}

} // namespace oracle
