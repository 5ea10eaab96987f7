// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/runners.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>

#include "match/rules.hpp"

namespace match {

namespace {

// What the rules that do not look at the body find of a pilot in a hole; absent: a failure.
std::optional<AnswerKind> at_best(const Job& job, const Triple& triple) {
    const auto kind = needs_work(*triple.pilot) ? AnswerKind::after_work : AnswerKind::ready;
    const bool part_is_known = job.question->thick || job.question->blind;
    const auto verdict =
        worse(worse(judge_running(job, triple).verdict, judge_drill(job, triple).verdict),
              part_is_known ? judge_guidance(job, triple).verdict : Verdict::pass);
    if (verdict == Verdict::fail)
        return std::nullopt;
    return verdict == Verdict::unknown ? AnswerKind::measure_first : kind;
}

} // namespace

Runners::Runners(const Job& job, const trade::Rack& rack, const Windows& windows,
                 trade::Detail detail)
    : job_(job) {
    rack.pilots_in(windows.running_pilot, detail,
                   [this](const trade::PilotFacts& pilot) { add(pilot); });
    first_.push_back(static_cast<std::uint32_t>(all_.size()));
    index();
}

// A pilot that is out of use, or in a body that is, fails in any body but that one, and there the
// body fails.
void Runners::add(const trade::PilotFacts& pilot) {
    if (is_out_of_use(pilot) || pilot.home_gone)
        return;
    const auto first = all_.size();
    const trade::BodyFacts any;
    for (std::size_t i = 0; i < job_.holes.size(); ++i) {
        const Triple triple{&any, &pilot, &job_.holes[i], {}};
        if (!leaves_seat(job_, *triple.hole))
            continue;
        if (const auto kind = at_best(job_, triple))
            all_.push_back({static_cast<std::uint32_t>(pilots_.size()),
                            static_cast<std::uint16_t>(i), *kind, seat_rank(seat_of(triple)),
                            closeness_of(triple)});
    }
    if (all_.size() == first)
        return;
    first_.push_back(static_cast<std::uint32_t>(first));
    pilots_.push_back(pilot);
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
                                                        const trade::BodyFacts& body) {
    static constexpr std::array k_all{Flat::none, Flat::measured, Flat::not_measured};
    const std::span<const Flat> all(k_all);
    if (!body.retention)
        return {};
    if (body.retention != trade::Retention::set_screw)
        return all;
    const bool located = body.set_screw_at && body.set_screw;
    if (kind == AnswerKind::ready)
        return located ? all.subspan(1, 1) : std::span<const Flat>();
    return all.first(located ? 2 : 1);
}

void Runners::index() {
    for (std::uint32_t i = 0; i < pilots_.size(); ++i) {
        by_number_[pilots_[i].number] = i;
        if (pilots_[i].in_body != 0)
            by_home_.emplace(pilots_[i].in_body, i);
    }
    for (std::uint32_t i = 0; i < all_.size(); ++i) {
        const auto& facts = pilot(all_[i]);
        const auto flat = static_cast<std::size_t>(flat_of(facts));
        every_.add(i, facts.shank_dia);
        if (all_[i].at_best <= AnswerKind::after_work)
            after_work_[flat].add(i, facts.shank_dia);
        if (all_[i].at_best == AnswerKind::ready)
            ready_[flat].add(i, facts.shank_dia);
    }
    every_.put_in_order();
    for (std::size_t flat = 0; flat < k_flats; ++flat) {
        after_work_[flat].put_in_order();
        ready_[flat].put_in_order();
    }
    in_order_.resize(all_.size());
    std::iota(in_order_.begin(), in_order_.end(), 0U);
    const auto key = [this](std::uint32_t at) {
        const auto& runner = all_[at];
        return std::tuple(runner.seat, job_.holes[runner.hole].published, runner.closeness, at);
    };
    std::sort(in_order_.begin(), in_order_.end(),
              [&](std::uint32_t a, std::uint32_t b) { return key(a) < key(b); });
}

std::span<const Runner> Runners::of(std::int64_t pilot) const {
    const auto found = by_number_.find(static_cast<std::int32_t>(pilot));
    if (found == by_number_.end())
        return {};
    const auto first = first_[found->second];
    return std::span<const Runner>(all_).subspan(first, first_[found->second + 1] - first);
}

} // namespace match
