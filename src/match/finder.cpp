// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/finder.hpp"

#include <algorithm>
#include <vector>

#include "match/pairing.hpp"
#include "match/rules.hpp"

namespace match {

namespace {

// What the body's own findings leave possible.
AnswerKind at_best(const Weighed& alone) {
    if (alone.unknown)
        return AnswerKind::measure_first;
    return alone.work ? AnswerKind::after_work : AnswerKind::ready;
}

Triple without_pilot(const trade::BodyFacts& body) {
    return {&body, nullptr, nullptr, {}};
}

OrderKey key_of(AnswerKind kind) {
    OrderKey key{};
    key.kind = kind;
    return key;
}

// What is as it is in the key of every alike body; where it falls short another hole may come
// first, and a pilot that falls short by less.
OrderKey least_of(const OrderKey& key, bool takes_pilot) {
    OrderKey least = key_of(key.kind);
    if (key.kind == AnswerKind::closest && !takes_pilot)
        least.shortfall = key.shortfall;
    if (key.kind == AnswerKind::closest)
        return least;
    least.seat = key.seat;
    least.published = key.published;
    least.closeness = key.closeness;
    return least;
}

} // namespace

trade::Detail detail_for(const Question& question) {
    return question.machine || question.thick || question.blind ? trade::Detail::all
                                                                : trade::Detail::usual;
}

Finder::Finder(const Job& job, const Windows& windows, KeptRunners& kept)
    : job_(job), trials_(kept.trials()), windows_(windows), kept_(kept),
      detail_(detail_for(*job.question)),
      running_(kept.of(Runners::Which::running, job, windows, detail_)), runners_(*running_) {
    for (const auto& candidate : job.holes) {
        const auto hole = hole_for_teeth(job, candidate);
        widest_surely_ = std::max(widest_surely_, hole.lo);
        widest_perhaps_ = std::max(widest_perhaps_, hole.hi);
    }
}

std::optional<Outcome> Finder::outcome_of(const trade::BodyFacts& body) const {
    if (is_misfit(body))
        return judged_without_hole(body);
    auto same = alike(job_, body, {runners_.most_clearance(), runners_.longest_shank()});
    if (!same)
        return std::nullopt;
    if (trade::may_take_pilot(body) && Pairing(job_, trials_, runners_, body).has_own())
        same->body.number = body.number; // like no other
    const auto [place, is_new] = known_.try_emplace(same->body);
    if (is_new)
        place->second = judged(same->body);
    auto outcome = place->second;
    if (!outcome)
        return std::nullopt;
    if (same->fails)
        outcome->least.shortfall = same->shortfall;
    if (outcome->by != Outcome::By::misfit)
        return outcome;
    same->body.cut_dia = body.cut_dia; // a misfit may need more over the head than any runner
    const auto [near, not_yet] = near_.try_emplace(same->body);
    if (not_yet)
        near->second = a_misfit_comes_near(same->body);
    return near->second ? outcome : std::nullopt;
}

// Whether the body's own pilot runs in none of the holes that it may choose among.
bool Finder::is_misfit(const trade::BodyFacts& body) const {
    if (job_.question->hole.kind != HoleKind::chosen || !trade::taken_as_integral(body))
        return false;
    const auto runs = [&](const CandidateHole& hole) { return hole.pilots.takes(body.pilot_dia); };
    return !windows_.running_pilot.takes(body.pilot_dia) ||
           std::none_of(job_.holes.begin(), job_.holes.end(), runs);
}

std::optional<Outcome> Finder::judged_without_hole(const trade::BodyFacts& body) const {
    const auto weighed = weigh(job_, without_pilot(body));
    if (!weighed.kind)
        return std::nullopt;
    Outcome outcome{Outcome::By::itself, key_of(*weighed.kind)};
    outcome.least.shortfall = weighed.shortfall;
    return outcome;
}

std::optional<Outcome> Finder::judged(const trade::BodyFacts& body) const {
    const auto alone = weigh(job_, without_pilot(body));
    const bool fits = alone.kind != AnswerKind::closest;
    const bool takes_pilot = trade::may_take_pilot(body);
    if (takes_pilot && fits)
        if (const auto kind = with_a_runner(body, at_best(alone)))
            return Outcome{Outcome::By::runner, key_of(*kind)};
    if (const auto pilotless = over_holes(job_, without_pilot(body)))
        return Outcome{Outcome::By::itself, least_of(pilotless->key, takes_pilot)};
    if (takes_pilot && fits && misfits())
        return Outcome{Outcome::By::misfit, key_of(AnswerKind::closest)};
    return std::nullopt;
}

std::optional<AnswerKind> Finder::with_a_runner(const trade::BodyFacts& body,
                                                AnswerKind at_best) const {
    const auto by_teeth = this->by_teeth(body);
    if (!by_teeth)
        return std::nullopt;
    at_best = std::max(at_best, *by_teeth);
    const Pairing pairing(job_, trials_, runners_, body);
    std::optional<AnswerKind> best;
    pairing.each_own([&](const Runner& runner) {
        const auto kind = pairing.kind_with(runner);
        if (kind && *kind <= AnswerKind::measure_first)
            best = std::min(best.value_or(*kind), *kind);
    });
    if (best == at_best)
        return best;
    const auto other = pairing.least_kind(at_best);
    return best && other ? std::min(*best, *other) : best ? best : other;
}

// Rule 6 before any pilot: the teeth reach the widest hole, perhaps, or none.
std::optional<AnswerKind> Finder::by_teeth(const trade::BodyFacts& body) const {
    if (!body.bore)
        return AnswerKind::measure_first;
    if ((*body.bore).lo > widest_perhaps_)
        return std::nullopt;
    return (*body.bore).hi > widest_surely_ ? AnswerKind::measure_first : AnswerKind::ready;
}

// Where every hole fails the body, a pilot that runs in none of them is judged without.
bool Finder::a_misfit_comes_near(const trade::BodyFacts& body) const {
    const Pairing pairing(job_, trials_, *misfits(), body);
    const auto is_near = [&](const Runner& runner) {
        return pairing.kind_with(runner) == AnswerKind::closest;
    };
    bool found = false;
    pairing.each_own([&](const Runner& runner) { found = found || is_near(runner); });
    return found || misfits()->any_at(AnswerKind::measure_first, body, is_near);
}

std::optional<Ranked> Finder::best_of(const trade::BodyFacts& body, const Outcome& outcome,
                                      const OrderKey* bound) const {
    if (outcome.by == Outcome::By::runner)
        return Pairing(job_, trials_, runners_, body).best(outcome.kind(), {}, bound);
    if (outcome.kind() == AnswerKind::closest && trade::may_take_pilot(body))
        if (const auto best = best_closest(body, outcome.least.shortfall, bound);
            best || (bound && comes_near_with_a_pilot(body)))
            return best;
    return over_holes(job_, without_pilot(body));
}

std::optional<Ranked> Finder::best_closest(const trade::BodyFacts& body, const Shortfall& least,
                                           const OrderKey* bound) const {
    auto best = Pairing(job_, trials_, runners_, body).best(AnswerKind::closest, least, bound);
    const auto* misfits = misfits_for(body);
    if (!misfits)
        return best;
    const auto misfit = Pairing(job_, trials_, *misfits, body).best(AnswerKind::closest, {}, bound);
    return misfit && (!best || misfit->key < best->key) ? misfit : best;
}

bool Finder::comes_near_with_a_pilot(const trade::BodyFacts& body) const {
    const auto* misfits = misfits_for(body);
    return Pairing(job_, trials_, runners_, body).any(AnswerKind::closest) ||
           (misfits && Pairing(job_, trials_, *misfits, body).any(AnswerKind::closest));
}

// In a body that falls short by itself a misfit would be a second failure.
const Runners* Finder::misfits_for(const trade::BodyFacts& body) const {
    return alone(job_, body) == AnswerKind::closest ? nullptr : misfits();
}

// Only a pilot that may choose its hole can go without.
const Runners* Finder::misfits() const {
    if (job_.question->hole.kind != HoleKind::chosen)
        return nullptr;
    if (!misfits_)
        misfits_ = kept_.of(Runners::Which::misfits, job_, windows_, detail_);
    return misfits_.get();
}

// Its head does not fail with any pilot.
bool Finder::clears_with_any(const trade::BodyFacts& body) const {
    return !job_.head || !body.cut_dia ||
           (*body.cut_dia).hi - job_.head->lo >= runners_.most_clearance();
}

int Finder::pilots_that_do(const trade::BodyFacts& body) const {
    const Pairing pairing(job_, trials_, runners_, body);
    std::vector<std::int32_t> pilots;
    const auto count = [&](const Runner& runner) {
        if (pairing.would_do(runner))
            pilots.push_back(runners_.pilot(runner).number);
    };
    pairing.each_own(count);
    const bool all_do =
        clears_with_any(body) && trade::holds_by(body) == trade::Retention::set_screw;
    (void)runners_.any_at(AnswerKind::measure_first, body, [&](const Runner& runner) {
        if (all_do && !pairing.is_tried(runner))
            pilots.push_back(runners_.pilot(runner).number);
        else
            count(runner);
        return false;
    });
    std::sort(pilots.begin(), pilots.end());
    return static_cast<int>(std::unique(pilots.begin(), pilots.end()) - pilots.begin());
}

} // namespace match
