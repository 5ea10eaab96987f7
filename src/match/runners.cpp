// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/runners.hpp"

#include <algorithm>
#include <limits>
#include <numeric>
#include <tuple>

#include "match/rules.hpp"

namespace match {

namespace {

// What the rules that do not look at the body find of a pilot, in a hole or in none.
Weighed before_any_body(const Job& job, const Triple& triple, const Finding& running) {
    Scale scale(job, triple);
    scale.add(running);
    if (triple.hole)
        scale.add(judge_drill(job, triple));
    if (triple.hole && !leaves_seat(job, *triple.hole))
        scale.add({Rule::head, Verdict::fail, {}, false});
    if (job.question->thick || job.question->blind)
        scale.add(judge_guidance(job, triple));
    scale.add(judge_in_hand(job, triple));
    return scale.weighed();
}

bool runs_in_any(const Job& job, Triple triple) {
    return std::any_of(job.holes.begin(), job.holes.end(), [&](const CandidateHole& hole) {
        triple.hole = &hole;
        return judge_running(job, triple).verdict != Verdict::fail;
    });
}

const trade::BodyFacts k_any_body{};

} // namespace

Runners::Runners(Which which, const Job& job, const trade::Rack& rack, const Windows& windows,
                 trade::Detail detail)
    : job_(job) {
    rack.pilots_in(which == Which::running ? windows.running_pilot : windows.near_pilot, detail,
                   [&](const trade::PilotFacts& pilot) { add(which, pilot); });
    first_.push_back(static_cast<std::uint32_t>(all_.size()));
    index();
    put_in_order();
}

void Runners::add(Which which, const trade::PilotFacts& pilot) {
    const auto first = all_.size();
    const Triple alone{&k_any_body, &pilot, nullptr, {}};
    if (which == Which::misfits) {
        if (!runs_in_any(job_, alone))
            add_with(alone, Runner::k_no_hole);
    } else {
        for (std::uint16_t hole = 0; hole < job_.holes.size(); ++hole)
            add_with({&k_any_body, &pilot, &job_.holes[hole], {}}, hole);
    }
    if (all_.size() == first)
        return;
    first_.push_back(static_cast<std::uint32_t>(first));
    pilots_.push_back(pilot);
}

void Runners::add_with(const Triple& triple, std::uint16_t hole) {
    const auto running = judge_running(job_, triple);
    if (triple.hole && running.verdict == Verdict::fail)
        return;
    const auto weighed = before_any_body(job_, triple, running);
    if (!weighed.kind)
        return;
    most_clearance_ = std::max(most_clearance_, clearance_needed(job_, triple));
    Runner runner;
    runner.pilot = static_cast<std::uint32_t>(pilots_.size());
    runner.hole = hole;
    runner.at_best = *weighed.kind;
    runner.seat = static_cast<std::uint8_t>(seat_rank(seat_of(triple)));
    runner.published = static_cast<std::uint8_t>(
        triple.hole ? static_cast<int>(triple.hole->published) : k_no_hole_published);
    runner.closeness = static_cast<std::int32_t>(
        std::min<std::int64_t>(closeness_of(triple), std::numeric_limits<std::int32_t>::max()));
    if (!triple.hole)
        shortfalls_.push_back(weighed.shortfall);
    all_.push_back(runner);
}

Runners::Flat Runners::flat_of(const trade::PilotFacts& pilot) {
    if (pilot.has_flat == false)
        return Flat::none;
    const bool measured = pilot.flat_at && pilot.flat_length && pilot.shank_length;
    return measured ? Flat::measured : Flat::not_measured;
}

// Rule 5 without a trial: no flat at all is work, one that was not measured is unknown, and so is
// one in a body whose set screw is not located.
std::span<const Runners::Flat> Runners::flats_that_hold(AnswerKind kind,
                                                        const trade::BodyFacts& body) const {
    static constexpr std::array k_all{Flat::none, Flat::measured, Flat::not_measured};
    const std::span<const Flat> all(k_all);
    if (!body.retention)
        return {};
    if (body.retention != trade::Retention::set_screw)
        return all;
    const bool located = body.set_screw_at && body.set_screw;
    if (kind == AnswerKind::ready)
        return located && ready_flats_.any_covers(body, half_point(job_, body))
                   ? all.subspan(1, 1)
                   : std::span<const Flat>();
    return all.first(located ? 2 : 1);
}

void Runners::index() {
    for (std::uint32_t i = 0; i < pilots_.size(); ++i) {
        by_number_.emplace_back(pilots_[i].number, i);
        if (pilots_[i].in_body != 0)
            by_home_.emplace(pilots_[i].in_body, i);
        index_pilot(i);
    }
    std::sort(by_number_.begin(), by_number_.end());
}

void Runners::index_pilot(std::uint32_t pilot) {
    const auto& facts = pilots_[pilot];
    const auto flat = static_cast<std::size_t>(flat_of(facts));
    const auto width = [this](std::uint32_t at) {
        return all_[at].hole == Runner::k_no_hole ? length::Length()
                                                  : job_.holes[all_[at].hole].hole.lo;
    };
    // Without a hole there are no teeth to judge.
    const auto widest_hole = [this](std::uint32_t at) {
        return all_[at].hole == Runner::k_no_hole ? length::millimetres(2000)
                                                  : job_.holes[all_[at].hole].hole.hi;
    };
    const auto add_widest = [&](AnswerKind kind, ByShank& list) {
        std::optional<std::uint32_t> widest;
        for (auto at = first_[pilot]; at < first_[pilot + 1]; ++at) {
            const bool misfit = all_[at].hole == Runner::k_no_hole;
            const bool good = all_[at].at_best <= kind;
            if ((good || (misfit && kind == AnswerKind::measure_first)) &&
                (!widest || width(at) > width(*widest)))
                widest = at;
        }
        if (widest)
            list.add(*widest, facts.shank_dia, widest_hole(*widest));
        return widest.has_value();
    };
    if (add_widest(AnswerKind::ready, ready_[flat]) && flat_of(facts) == Flat::measured)
        ready_flats_.add(facts);
    add_widest(AnswerKind::after_work, after_work_[flat]);
    add_widest(AnswerKind::measure_first, usable_);
}

OrderKey Runners::least_key(std::uint32_t at) const {
    const auto& runner = all_[at];
    OrderKey key{};
    if (!shortfalls_.empty())
        key.shortfall = shortfalls_[at];
    key.seat = runner.seat;
    key.published = runner.published;
    key.closeness = runner.closeness;
    return key;
}

void Runners::put_in_order() {
    usable_.put_in_order();
    ready_flats_.put_in_order();
    for (std::size_t flat = 0; flat < k_flats; ++flat) {
        after_work_[flat].put_in_order();
        ready_[flat].put_in_order();
    }
    in_order_.resize(all_.size());
    std::iota(in_order_.begin(), in_order_.end(), 0U);
    std::sort(in_order_.begin(), in_order_.end(), [this](std::uint32_t a, std::uint32_t b) {
        if (!shortfalls_.empty() && shortfalls_[a] < shortfalls_[b])
            return true;
        if (!shortfalls_.empty() && shortfalls_[b] < shortfalls_[a])
            return false;
        const auto key = [this](std::uint32_t at) {
            return std::tuple(all_[at].seat, all_[at].published, all_[at].closeness, at);
        };
        return key(a) < key(b);
    });
}

} // namespace match
