// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/job.hpp"

#include <algorithm>

namespace match {

using length::Length;
using length::Range;

namespace {

// Bands are by the hole as it comes out on average, not by the drill; upper limit included.
const trade::GoodClearance& good_for(Length hole, const trade::Practice& practice) {
    if (hole <= length::sixty_fourths(8))
        return practice.good_to_eighth;
    if (hole <= length::sixty_fourths(16))
        return practice.good_to_quarter;
    if (hole <= length::sixty_fourths(32))
        return practice.good_to_half;
    return practice.good_over_half;
}

Published published_as(Length drill, const trade::Screw& screw) {
    if (screw.close && screw.close->diameter == drill)
        return Published::close;
    if (screw.normal && screw.normal->diameter == drill)
        return Published::normal;
    if (screw.loose && screw.loose->diameter == drill)
        return Published::loose;
    return Published::other;
}

void put_clearances(const trade::Practice& practice, CandidateHole& candidate) {
    candidate.good = good_for(candidate.twice_mean / 2, practice);
    candidate.running.sizes = Range{candidate.hole.lo - practice.running_most,
                                    candidate.hole.hi - practice.running_least};
}

CandidateHole measured_hole(const Range& hole, const trade::Practice& practice) {
    CandidateHole candidate;
    candidate.hole = hole;
    candidate.twice_mean = hole.lo + hole.hi;
    put_clearances(practice, candidate);
    return candidate;
}

// Where the screw's diameter is unknown any drill under the head may be the one.
bool may_be_chosen(const CandidateHole& candidate, const Job& job) {
    const auto& screw = job.question->screw;
    const Length drill = candidate.drill->diameter;
    if (!screw.screw_dia)
        return !job.head || drill <= job.head->hi;
    return candidate.hole.lo >= screw.screw_dia->hi && drill <= *loosest(screw, job.shop->practice);
}

std::vector<CandidateHole> candidate_holes(const Job& job) {
    const auto& asked = job.question->hole;
    const auto& screw = job.question->screw;
    if (asked.kind == HoleKind::measured)
        return {measured_hole(asked.measured, job.shop->practice)};
    if (asked.kind == HoleKind::drilled)
        return {drilled_hole(asked.drill, screw, *job.shop)};
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

std::optional<Length> depth_to_cut(const Question& question, const trade::Practice& practice) {
    const auto& screw = question.screw;
    if (!screw.hex && !screw.head_height)
        return std::nullopt;
    if (question.washer && !question.washer->thickness)
        return std::nullopt;
    const Length sunk = screw.hex ? practice.spotface_depth : screw.head_height->hi;
    const Length washer = question.washer ? question.washer->thickness->hi : Length();
    return sunk + washer + question.below;
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
    const auto oversize = trade::oversize_at(shop.oversize, drill.diameter);
    CandidateHole candidate;
    candidate.drill = drill;
    candidate.hole = {drill.diameter + oversize.least, drill.diameter + oversize.most};
    candidate.twice_mean = (drill.diameter + oversize.mean) * 2;
    candidate.published = published_as(drill.diameter, screw);
    put_clearances(shop.practice, candidate);
    return candidate;
}

Job make_job(const Question& question, const Shop& shop) {
    Job job{&question, &shop, head_to_clear(question), {}, {}, {}};
    if (job.head) {
        const bool washer = question.washer && question.screw.head_dia->hi < job.head->hi;
        job.sizes = size_targets(question.screw, job.head->hi, washer, shop.practice);
    }
    job.depth = depth_to_cut(question, shop.practice);
    job.holes = candidate_holes(job);
    return job;
}

} // namespace match
