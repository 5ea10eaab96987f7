// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/runners.hpp"

#include <algorithm>
#include <limits>
#include <tuple>

#include "match/rules.hpp"

namespace match {

namespace {

// What the rules that do not look at the body find of a pilot, in a hole or in none.
Weighed before_any_body(const Job& job, const Triple& triple) {
    Scale scale(job, triple);
    scale.add(judge_running(job, triple));
    if (triple.hole)
        scale.add(judge_drill(job, triple));
    if (triple.hole && !leaves_seat(job, *triple.hole))
        scale.add({Rule::head, Verdict::fail, {}, false});
    if (job.question->thick || job.question->blind)
        scale.add(judge_guidance(job, triple));
    scale.add(judge_in_hand(job, triple));
    return scale.weighed();
}

Rank rank_in_another(const Triple& triple) {
    const int published =
        triple.hole ? static_cast<int>(triple.hole->published) : k_no_hole_published;
    return rank_of(published, seat_rank(seat_of(triple)), closeness_of(triple));
}

// Pilots that come one after the other are often of one size.
bool judged_alike(const trade::PilotFacts& a, const trade::PilotFacts& b) {
    const auto judged = [](const trade::PilotFacts& pilot) {
        return std::tuple(is_out_of_use(pilot), needs_work(pilot), pilot.home_gone,
                          pilot.in_body != 0);
    };
    return a.pilot_dia == b.pilot_dia && a.pilot_length == b.pilot_length && judged(a) == judged(b);
}

const trade::BodyFacts k_any_body{};

bool asks_the_same_of_pilots(const Job& a, const Job& b) {
    const auto asked = [](const Job& job) {
        const auto& question = *job.question;
        const bool in_part = question.thick || question.blind;
        return std::tuple(job.shop, question.hole.kind, question.hole.tapped,
                          question.screw.screw_dia, question.thick, question.blind,
                          in_part ? job.depth : std::nullopt);
    };
    const auto same_hole = [&](const CandidateHole& one, const CandidateHole& other) {
        const auto made = [](const CandidateHole& hole) {
            return std::tuple(hole.hole, hole.size, hole.published);
        };
        return made(one) == made(other) && leaves_seat(a, one) == leaves_seat(b, other);
    };
    return asked(a) == asked(b) &&
           std::equal(a.holes.begin(), a.holes.end(), b.holes.begin(), b.holes.end(), same_hole);
}

} // namespace

Runners::Runners(Which which, const Job& job, const trade::Rack& rack, const Trials& trials,
                 const Windows& windows, trade::Detail detail)
    : which_(which), detail_(detail), question_(*job.question), job_(job) {
    job_.question = &question_;
    rack.pilots_in(which == Which::running ? windows.running_pilot : windows.near_pilot, detail,
                   [&](const trade::PilotFacts& pilot) { add(which, pilot); });
    index(trials);
}

bool Runners::serve(Which which, const Job& job, trade::Detail detail) const {
    return which == which_ && detail == detail_ && asks_the_same_of_pilots(job, job_);
}

void Runners::add(Which which, const trade::PilotFacts& pilot) {
    if (pilots_.empty() || !judged_alike(pilots_.back(), pilot)) {
        const auto first = static_cast<std::uint32_t>(fits_.size());
        add_fits(which, pilot);
        if (fits_.size() == first)
            return;
        fits_of_.push_back({first, static_cast<std::uint32_t>(fits_.size())});
    } else {
        fits_of_.push_back(fits_of_.back());
    }
    pilots_.push_back(pilot);
}

void Runners::add_fits(Which which, const trade::PilotFacts& pilot) {
    const auto runs = [&](const CandidateHole& hole) { return hole.pilots.takes(pilot.pilot_dia); };
    if (which == Which::misfits) {
        if (std::none_of(job_.holes.begin(), job_.holes.end(), runs))
            add_with({&k_any_body, &pilot, nullptr, {}}, Fit::k_no_hole);
        return;
    }
    for (std::uint16_t hole = 0; hole < job_.holes.size(); ++hole)
        if (runs(job_.holes[hole]))
            add_with({&k_any_body, &pilot, &job_.holes[hole], {}}, hole);
}

void Runners::add_with(const Triple& triple, std::uint16_t hole) {
    const auto weighed = before_any_body(job_, triple);
    if (!weighed.kind)
        return;
    most_clearance_ = std::max(most_clearance_, clearance_needed(job_, triple));
    fits_.push_back({rank_in_another(triple), hole, *weighed.kind});
    if (!triple.hole)
        shortfalls_.push_back(weighed.shortfall);
}

Flat Runners::flat_of(const trade::PilotFacts& pilot) {
    if (pilot.has_flat == false)
        return Flat::none;
    const bool measured = pilot.flat_at && pilot.flat_length && pilot.shank_length;
    return measured ? Flat::measured : Flat::not_measured;
}

// Rule 5 without a trial: no flat at all is work, one that was not measured is unknown, and so is
// one in a body whose set screw is not located.
std::span<const Flat> Runners::flats_that_hold(AnswerKind kind,
                                               const trade::BodyFacts& body) const {
    static constexpr std::array k_all{Flat::none, Flat::measured, Flat::not_measured};
    const std::span<const Flat> all(k_all);
    // Otherwise held, it must have been tried.
    if (trade::holds_by(body) != trade::Retention::set_screw)
        return {};
    const bool located = body.set_screw_at && body.set_screw;
    if (kind == AnswerKind::ready)
        return located && ready_flats_.any_covers(body, half_point(job_, body))
                   ? all.subspan(1, 1)
                   : std::span<const Flat>();
    return all.first(located ? 2 : 1);
}

void Runners::index(const Trials& trials) {
    for (std::uint32_t i = 0; i < pilots_.size(); ++i) {
        const auto& pilot = pilots_[i];
        if (trials.may_have_pilot(pilot.number))
            tried_.emplace_back(pilot.number, i);
        if (pilot.in_body != 0)
            by_home_.emplace_back(pilot.in_body, i);
        const auto one = shanked(i);
        by_shank_.add(one, pilot.shank_dia);
        if (pilot.shank_length)
            longest_shank_ = std::max(longest_shank_, (*pilot.shank_length).lo);
        const bool is_ready = one.widest[static_cast<std::size_t>(AnswerKind::ready)] > 0;
        if (is_ready && one.flat == Flat::measured)
            ready_flats_.add(pilot);
    }
    std::sort(tried_.begin(), tried_.end());
    std::sort(by_home_.begin(), by_home_.end());
    std::vector<std::int64_t> homes;
    for (const auto& [body, pilot] : by_home_)
        homes.push_back(body);
    homes_ = trade::NumberSet(std::move(homes));
    by_shank_.put_in_order();
    ready_flats_.put_in_order();
}

std::optional<Runner> Runners::widest_at(AnswerKind kind, std::uint32_t pilot) const {
    std::optional<Runner> widest;
    each_fit(pilot, [&](const Runner& runner) {
        const auto* hole = hole_of(runner, job_);
        const bool comes_to = hole ? runner.fit->at_best <= kind
                                   : kind == AnswerKind::measure_first; // a misfit, by itself
        if (comes_to && (!widest || hole->size.lo > hole_of(*widest, job_)->size.lo))
            widest = runner;
    });
    return widest;
}

Shanked Runners::shanked(std::uint32_t pilot) const {
    Shanked shanked{pilot, flat_of(pilots_[pilot]), {}};
    for (const auto kind : {AnswerKind::ready, AnswerKind::after_work, AnswerKind::measure_first})
        if (const auto widest = widest_at(kind, pilot)) {
            const auto* hole = hole_of(*widest, job_); // without one no teeth are judged
            shanked.widest[static_cast<std::size_t>(kind)] =
                hole ? static_cast<std::int32_t>(hole_for_teeth(job_, *hole).hi.nm())
                     : std::numeric_limits<std::int32_t>::max();
        }
    return shanked;
}

Rank Runners::least_rank(AnswerKind kind, const trade::Limits& bore) const {
    const auto ends = bore ? *bore : length::Range{};
    const auto [place, is_new] =
        least_ranks_.try_emplace({kind, ends.lo.nm(), ends.hi.nm()}, k_last_rank);
    auto& least = place->second;
    if (is_new)
        (void)by_shank_.any_perhaps(bore, practice(), [&](const Shanked& pilot) {
            each_fit(pilot.pilot, [&](const Runner& runner) {
                if (runner.fit->at_best <= kind)
                    least = std::min(least, runner.fit->rank);
            });
            return false;
        });
    return least;
}

} // namespace match
