// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Heads, depths and size classes.
#include "oracle/sizes.hpp"

#include <algorithm>
#include <string>

#include "oracle/iso286.hpp"

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

// The figure of the tables: a recommendation, else a spotface, else the handbook's tool.
const trade::Counterbore* table_row(const match::Question& question) {
    if (washer_is_larger(question)) {
        return nullptr;
    }
    for (const std::string kind : {"recommended", "spotface", "tool"}) {
        for (const trade::Counterbore& row : question.screw.counterbores) {
            if (row.kind == kind) {
                return &row;
            }
        }
    }
    return nullptr;
}

Length over_head(const match::Question& question, const match::Shop& shop, Length head) {
    const auto& size = question.screw.size; // a screw of the shop's own may have none
    const auto& screw = question.screw.screw_dia;
    const Length inch = length::sixty_fourths(64);
    const bool large = size ? size->diameter >= inch : screw && screw->hi >= inch;
    return head +
           (large ? shop.practice.published_over_head_inch : shop.practice.published_over_head);
}

Length handbook_tool(const match::Question& question, const match::Shop& shop, Length head) {
    const bool number = has_system(question.screw, trade::SizeSystem::number);
    return head +
           (number ? shop.practice.tool_over_head_number : shop.practice.tool_over_head_fraction);
}

// As asked, or as the standard of the counterbore says, or as usual.
Length head_below(const match::Question& question, const match::Shop& shop) {
    if (question.below) {
        return *question.below;
    }
    for (const trade::Counterbore& row : question.screw.counterbores) {
        if (row.kind == "recommended" && row.depth_addition) {
            return *row.depth_addition;
        }
    }
    return shop.practice.below_flush;
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
    if (question.screw.hex) {
        return shop.practice.spotface_depth;
    }
    if (!question.screw.head_height || (question.washer && !question.washer->thickness)) {
        return std::nullopt;
    }
    const Length washer = question.washer ? question.washer->thickness->hi : Length();
    return question.screw.head_height->hi + washer + head_below(question, shop);
}

std::optional<Targets> targets(const match::Question& question, const match::Shop& shop) {
    const length::MaybeRange head = what_goes_in(question);
    if (!head) {
        return std::nullopt;
    }
    const trade::Counterbore* row = table_row(question);
    Targets found;
    found.published = row != nullptr ? row->diameter : over_head(question, shop, head->hi);
    const bool is_the_tool = row != nullptr && row->kind == "tool";
    found.tool = is_the_tool || is_metric(question.screw) ? found.published
                                                          : handbook_tool(question, shop, head->hi);
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
