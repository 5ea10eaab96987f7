// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/finder.hpp"

#include <algorithm>
#include <set>

#include "match/rules.hpp"

namespace match {

namespace {

// What the body's own findings leave possible.
AnswerKind at_best(const Judged& alone) {
    const auto unknown = [](const Finding& finding) { return finding.verdict == Verdict::unknown; };
    const auto last = alone.findings.begin() + static_cast<std::ptrdiff_t>(alone.count);
    if (std::any_of(alone.findings.begin(), last, unknown))
        return AnswerKind::measure_first;
    return alone.work ? AnswerKind::after_work : AnswerKind::ready;
}

AnswerKind next(AnswerKind kind) {
    return static_cast<AnswerKind>(static_cast<int>(kind) + 1);
}

// No runner at this place in the order can give the body a lesser key.
OrderKey least_key(const Job& job, const trade::BodyFacts& body, AnswerKind kind,
                   const Runner& runner) {
    OrderKey key{};
    key.kind = kind;
    const auto size = size_of(job, {&body, nullptr, nullptr, {}});
    key.size = size ? static_cast<int>(*size) : k_size_not_known;
    key.seat = runner.seat;
    key.published = static_cast<int>(job.holes[runner.hole].published);
    key.closeness = runner.closeness;
    return key;
}

} // namespace

trade::Detail detail_for(const Question& question) {
    return question.machine || question.thick || question.blind ? trade::Detail::all
                                                                : trade::Detail::usual;
}

// One body with its trials, put to runners.
class Finder::Search {
  public:
    Search(const Finder& finder, const trade::BodyFacts& body)
        : finder_(finder), body_(body), tried_(finder.trials_.in_body(body.number)) {}

    [[nodiscard]] Judged with(const Runner& runner) const {
        const auto number = finder_.runners_.pilot(runner).number;
        return judge(finder_.job_, finder_.runners_.in(body_, runner, how_tried(tried_, number)));
    }
    [[nodiscard]] bool comes_to(AnswerKind kind, const Runner& runner) const {
        const auto judged = with(runner);
        return judged.kind && *judged.kind <= kind;
    }
    // The pilots tried in it and found in it.
    template <typename See>
    void each_own(const See& see) const {
        const auto see_all = [&](std::int64_t pilot) {
            for (const auto& runner : finder_.runners_.of(pilot))
                see(runner);
        };
        for (const auto& trial : tried_)
            see_all(trial.pilot);
        finder_.runners_.each_in_body(body_.number, see_all);
    }
    void keep_better(const Runner& runner, AnswerKind kind, std::optional<Ranked>& best) const {
        const auto tried = how_tried(tried_, finder_.runners_.pilot(runner).number);
        const auto triple = finder_.runners_.in(body_, runner, tried);
        if (judge_slip(finder_.job_, triple).verdict == Verdict::fail)
            return;
        const auto judged = judge(finder_.job_, triple);
        if (judged.kind != kind)
            return;
        const auto key = order_key(finder_.job_, judged);
        if (!best || key < best->key)
            best = Ranked{judged, key};
    }

  private:
    const Finder& finder_;
    const trade::BodyFacts& body_;
    std::span<const trade::Trial> tried_;
};

Finder::Finder(const Job& job, const trade::Rack& rack, const Trials& trials)
    : job_(job), rack_(rack), trials_(trials), windows_(windows_of(job)),
      detail_(detail_for(*job.question)), runners_(job, rack, windows_, detail_) {}

std::optional<AnswerKind> Finder::with_a_runner(const trade::BodyFacts& body,
                                                AnswerKind at_best) const {
    const Search search(*this, body);
    std::optional<AnswerKind> own;
    search.each_own([&](const Runner& runner) {
        const auto judged = search.with(runner);
        if (judged.kind && *judged.kind <= AnswerKind::measure_first)
            own = std::min(own.value_or(*judged.kind), *judged.kind);
    });
    for (auto kind = at_best; kind <= AnswerKind::measure_first; kind = next(kind)) {
        const auto does = [&](const Runner& runner) { return search.comes_to(kind, runner); };
        if ((own && *own <= kind) || runners_.any_at(kind, body, does))
            return kind;
    }
    return std::nullopt;
}

std::optional<Outcome> Finder::outcome_of(const trade::BodyFacts& body) const {
    const auto own = judge(job_, {&body, nullptr, nullptr, {}});
    if (!own.kind)
        return std::nullopt;
    if (own.kind != AnswerKind::closest)
        if (const auto kind = with_a_runner(body, at_best(own)))
            return Outcome{*kind, true};
    if (const auto pilotless = over_holes(job_, {&body, nullptr, nullptr, {}}))
        return Outcome{*pilotless->judged.kind, false};
    return own.kind == AnswerKind::closest || !best_closest(body)
               ? std::nullopt
               : std::optional(Outcome{AnswerKind::closest, false});
}

std::optional<Ranked> Finder::best_runner(const trade::BodyFacts& body, AnswerKind kind,
                                          const OrderKey* bound) const {
    const Search search(*this, body);
    std::optional<Ranked> best;
    search.each_own([&](const Runner& runner) { search.keep_better(runner, kind, best); });
    for (const auto at : runners_.in_order()) {
        const auto& runner = runners_.all()[at];
        const auto least = least_key(job_, body, kind, runner);
        if ((best && !(least < best->key)) || (bound && !(least < *bound)))
            break;
        search.keep_better(runner, kind, best);
    }
    return best;
}

std::optional<Ranked> Finder::best_of(const trade::BodyFacts& body, const Outcome& outcome,
                                      const OrderKey* bound) const {
    if (outcome.by_pilot)
        return best_runner(body, outcome.kind, bound);
    if (outcome.kind == AnswerKind::closest)
        if (const auto best = best_closest(body))
            return best;
    return over_holes(job_, {&body, nullptr, nullptr, {}});
}

// Where no pilot does, each that comes near is tried: the one failure may be the pilot's, or one
// that the body and the pilot share.
std::optional<Ranked> Finder::best_closest(const trade::BodyFacts& body) const {
    const auto tried = trials_.in_body(body.number);
    const auto own = alone(job_, body);
    std::optional<Ranked> best;
    for (const auto& pilot : near_pilots()) {
        const auto pair =
            pair_of(job_, {&body, &pilot, nullptr, how_tried(tried, pilot.number)}, own);
        if (pair && (!best || pair->key < best->key))
            best = pair;
    }
    return best;
}

const std::vector<trade::PilotFacts>& Finder::near_pilots() const {
    if (!near_) {
        near_.emplace();
        rack_.pilots_in(windows_.near_pilot, detail_,
                        [this](const trade::PilotFacts& pilot) { near_->push_back(pilot); });
    }
    return *near_;
}

int Finder::pilots_that_do(const trade::BodyFacts& body) const {
    const Search search(*this, body);
    std::set<std::int64_t> pilots;
    const auto count = [&](const Runner& runner) {
        const auto number = runners_.pilot(runner).number;
        if (pilots.count(number) == 0 && search.comes_to(AnswerKind::measure_first, runner))
            pilots.insert(number);
        return false;
    };
    search.each_own(count);
    (void)runners_.any_at(AnswerKind::measure_first, body, count);
    return static_cast<int>(pilots.size());
}

} // namespace match
