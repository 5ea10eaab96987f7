// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "speed/cut_down.hpp"

#include "store/lists.hpp"
#include "store/reference.hpp"

namespace speed {

namespace {

Asked asked_of(const match::Job& job, const trade::Practice& practice) {
    Asked asked;
    asked.name = job.question->screw.name;
    asked.head_lo = job.head->lo.nm();
    asked.head_hi = job.head->hi.nm();
    asked.screw_hi = job.question->screw.screw_dia->hi.nm();
    const match::SizeTargets& sizes = *job.sizes;
    asked.twice_largest = (sizes.largest * 2).nm();
    asked.twice_small = ((sizes.tool - practice.tool_size_under) * 2).nm();
    asked.twice_tool = (sizes.tool + sizes.published).nm();
    asked.twice_recommended = ((sizes.published + practice.recommended_over) * 2).nm();
    for (const auto& hole : job.holes)
        if (hole.hole.hi.nm() <= asked.head_lo * practice.seat_share / 1000)
            asked.holes.push_back(
                {hole.drill ? hole.drill->name : "", hole.size.lo.nm(), hole.size.hi.nm(),
                 hole.running.least.nm(), hole.running.most.nm(),
                 (hole.size.lo + hole.size.hi - hole.good.least - hole.good.most).nm()});
    return asked;
}

Limits limits_of(const trade::Practice& practice) {
    return {practice.head_clearance.nm(), practice.slip_least.nm(), practice.slip_most.nm()};
}

} // namespace

CutDown cut_down(const store::File& file) {
    const store::Reference tables;
    const auto shop =
        match::make_shop(tables, trade::read_practice(tables.practice()), file.unit());
    auto rows = store::house(file);
    rows.insert(rows.begin(), {k_one_screw, "", ""});
    CutDown result{limits_of(shop.practice), {}};
    for (const auto& row : rows) {
        match::Question question;
        question.screw = trade::resolve_screw(row.screw, "", tables, {});
        if (!row.hole.empty())
            question.hole =
                match::parse_hole(row.hole, question.screw, tables, shop.practice, file.unit());
        Asked asked = asked_of(match::make_job(question, shop), shop.practice);
        asked.id = static_cast<std::int64_t>(result.asked.size());
        result.asked.push_back(std::move(asked));
    }
    return result;
}

} // namespace speed
