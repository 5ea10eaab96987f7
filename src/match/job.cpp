// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/job.hpp"

#include <algorithm>

#include "trade/tolerance.hpp"

namespace match {

using length::Length;
using length::Range;

namespace {

// Bands are by the drill, or the hole at its largest; upper limit included.
const trade::GoodClearance& good_for(Length hole, const trade::Practice& practice) {
    if (hole <= length::sixty_fourths(8))
        return practice.good_to_eighth;
    if (hole <= length::sixty_fourths(16))
        return practice.good_to_quarter;
    if (hole <= length::sixty_fourths(32))
        return practice.good_to_half;
    return practice.good_over_half;
}

Length running_most_for(Length hole, const trade::Practice& practice) {
    if (hole <= length::sixty_fourths(32))
        return practice.running_most;
    return hole <= length::sixty_fourths(64) ? practice.running_most_over_half
                                             : practice.running_most_over_inch;
}

Published published_as(Length drill, const trade::Screw& screw, const trade::Practice& practice) {
    if (screw.close && screw.close->diameter == drill)
        return Published::close;
    if (screw.normal && screw.normal->diameter == drill)
        return Published::normal;
    if (screw.loose && screw.loose->diameter == drill)
        return Published::loose;
    if (!screw.screw_dia || drill < screw.screw_dia->hi) // as a tapping hole is
        return Published::other;
    const bool no_play = drill - screw.screw_dia->hi < practice.size_on_size;
    return no_play ? Published::size_on_size : Published::other;
}

// A hole of which no more is relied on than `size`.
CandidateHole hole_of(const Range& size, const Range& hole, const trade::Practice& practice) {
    CandidateHole candidate;
    candidate.hole = hole;
    candidate.size = size;
    candidate.running = {practice.running_least, running_most_for(size.hi, practice)};
    candidate.good = good_for(size.hi, practice);
    candidate.pilots.sizes =
        Range{size.lo - candidate.running.most, size.hi - candidate.running.least};
    return candidate;
}

// A shoulder is a bearing: its hole is reamed to it, whatever the pilot.
CandidateHole reamed_hole(const trade::Screw& screw, const trade::Practice& practice) {
    const Length shoulder = screw.size->diameter;
    const Range hole = screw.is_metric() ? trade::h8_limits(shoulder)
                                         : Range{shoulder, shoulder + practice.reamed_over};
    auto candidate = hole_of(hole, hole, practice);
    candidate.published = Published::close;
    candidate.reamed = true;
    return candidate;
}

// Where the screw's diameter is unknown any drill under the head may be the one.
bool may_be_chosen(const CandidateHole& candidate, const Job& job) {
    const auto& screw = job.question->screw;
    const Length drill = candidate.drill->diameter;
    if (!screw.screw_dia)
        return !job.head || drill <= job.head->hi;
    return drill >= screw.screw_dia->hi && drill <= *loosest(screw, job.shop->practice);
}

std::vector<CandidateHole> candidate_holes(const Job& job) {
    const auto& asked = job.question->hole;
    const auto& screw = job.question->screw;
    if (asked.kind == HoleKind::measured)
        return {hole_of(asked.measured, asked.measured, job.shop->practice)};
    if (asked.kind == HoleKind::drilled)
        return {drilled_hole(asked.drill, screw, *job.shop)};
    if (screw.shoulder && screw.size)
        return {reamed_hole(screw, job.shop->practice)};
    std::vector<CandidateHole> holes;
    for (const auto& drill : job.shop->drills) {
        auto candidate = drilled_hole(drill, screw, *job.shop);
        if (may_be_chosen(candidate, job))
            holes.push_back(std::move(candidate));
    }
    return holes;
}

length::MaybeRange head_to_clear(const Question& question) {
    auto head = question.screw.head_dia;
    if (head && question.washer) {
        head->lo = std::max(head->lo, question.washer->outside_dia.lo);
        head->hi = std::max(head->hi, question.washer->outside_dia.hi);
    }
    return head;
}

// A spotface only cleans up: nothing is added to it.
std::optional<Length> depth_to_cut(const Question& question, const trade::Practice& practice) {
    const auto& screw = question.screw;
    if (screw.hex)
        return practice.spotface_depth;
    if (!screw.head_height || (question.washer && !question.washer->thickness))
        return std::nullopt;
    const Length washer = question.washer ? question.washer->thickness->hi : Length();
    return screw.head_height->hi + washer + below_surface(question, practice);
}

} // namespace

std::optional<Length> loosest(const trade::Screw& screw, const trade::Practice& practice) {
    if (screw.loose)
        return screw.loose->diameter;
    if (!screw.screw_dia)
        return std::nullopt;
    const Length dia = screw.screw_dia->hi;
    const auto share = Length::from_nm(dia.nm() * practice.loose_share / 1000);
    return dia + std::max(share, practice.loose_over);
}

CandidateHole drilled_hole(const trade::Drill& drill, const trade::Screw& screw, const Shop& shop) {
    const Length over = trade::most_over(shop.oversize, shop.drilled_holes, drill.diameter);
    auto candidate = hole_of(length::exactly(drill.diameter),
                             {drill.diameter, drill.diameter + over}, shop.practice);
    candidate.drill = drill;
    candidate.published = published_as(drill.diameter, screw, shop.practice);
    return candidate;
}

Length below_surface(const Question& question, const trade::Practice& practice) {
    if (question.below)
        return *question.below;
    for (const auto& row : question.screw.counterbores)
        if (row.kind == "recommended" && row.depth_addition)
            return *row.depth_addition;
    return practice.below_flush;
}

Job make_job(const Question& question, const Shop& shop, trade::NumberSet marked) {
    Job job{&question, &shop, head_to_clear(question), {}, {}, {}, {}};
    if (job.head) {
        const bool washer = question.washer && question.screw.head_dia->hi < job.head->hi;
        job.sizes = size_targets(question.screw, job.head->hi, washer ? &*question.washer : nullptr,
                                 shop.practice);
        if (!washer)
            job.made = made_for(question.screw, *job.sizes, shop.practice);
    }
    job.made.marked = std::move(marked);
    job.depth = depth_to_cut(question, shop.practice);
    job.holes = candidate_holes(job);
    return job;
}

} // namespace match
