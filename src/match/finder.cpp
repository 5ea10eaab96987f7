// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/finder.hpp"

#include <algorithm>
#include <set>

#include "match/rules.hpp"

namespace match {

namespace {

// What the body's own findings leave possible.
AnswerKind at_best(const Weighed& alone) {
    if (alone.unknown)
        return AnswerKind::measure_first;
    return alone.work ? AnswerKind::after_work : AnswerKind::ready;
}

AnswerKind next(AnswerKind kind) {
    return static_cast<AnswerKind>(static_cast<int>(kind) + 1);
}

std::size_t mixed(std::size_t hash, const trade::Limits& limits) {
    constexpr std::size_t k_odd = 0x9E3779B97F4A7C15ULL;
    const std::int64_t ends =
        limits ? ((*limits).lo.nm() << 32) ^ (*limits).hi.nm() : std::int64_t{-1};
    return (hash ^ static_cast<std::size_t>(ends)) * k_odd ^ (hash >> 29);
}

Triple without_pilot(const trade::BodyFacts& body) {
    return {&body, nullptr, nullptr, {}};
}

} // namespace

std::size_t SeatingHash::operator()(const Seating& seating) const {
    auto hash = static_cast<std::size_t>(seating.at_best);
    for (const auto& limits : {seating.cut_dia, seating.bore, seating.bore_depth, seating.set_screw,
                               seating.set_screw_at})
        hash = mixed(hash, limits);
    return hash;
}

trade::Detail detail_for(const Question& question) {
    return question.machine || question.thick || question.blind ? trade::Detail::all
                                                                : trade::Detail::usual;
}

// One body with its trials, put to runners.
class Finder::Search {
  public:
    Search(const Finder& finder, const Runners& runners, const trade::BodyFacts& body)
        : job_(finder.job_), runners_(runners), body_(body),
          tried_(finder.trials_.in_body(body.number)) {}

    [[nodiscard]] Triple with(const Runner& runner) const {
        return runners_.in(body_, runner, how_tried(tried_, runners_.pilot(runner).number));
    }
    [[nodiscard]] std::optional<AnswerKind> kind_with(const Runner& runner) const {
        return weigh(job_, with(runner)).kind;
    }
    // The pilots tried in it and found in it.
    template <typename See>
    void each_own(const See& see) const {
        for (const auto& trial : tried_)
            runners_.each_of(trial.pilot, see);
        runners_.each_in_body(body_.number, see);
    }
    [[nodiscard]] bool has_own() const {
        bool any = !tried_.empty();
        runners_.each_in_body(body_.number, [&any](const Runner&) { any = true; });
        return any;
    }
    // The least kind from `at_best` to measure first that a runner gives.
    [[nodiscard]] std::optional<AnswerKind> least_kind(AnswerKind at_best) const {
        for (auto kind = at_best; kind <= AnswerKind::measure_first; kind = next(kind)) {
            const auto does = [&](const Runner& runner) {
                const auto found = kind_with(runner);
                return found && *found <= kind;
            };
            if (runners_.any_at(kind, body_, does))
                return kind;
        }
        return std::nullopt;
    }
    // The best that comes to `kind`; absent where it would not come before `bound`. A closest falls
    // short by `least` or more.
    [[nodiscard]] std::optional<Ranked> best(AnswerKind kind, const Shortfall& least,
                                             const OrderKey* bound) const {
        const auto size = size_rank(job_, body_);
        std::optional<Ranked> best;
        each_own([&](const Runner& runner) { keep_better(runner, kind, best); });
        runners_.in_order([&](const Runner& runner, OrderKey key) {
            key.kind = kind;
            key.shortfall = std::max(key.shortfall, least);
            key.size = size;
            if ((best && !(key < best->key)) || (bound && !(key < *bound)))
                return false;
            keep_better(runner, kind, best);
            return true;
        });
        return best;
    }

  private:
    void keep_better(const Runner& runner, AnswerKind kind, std::optional<Ranked>& best) const {
        const auto triple = with(runner);
        if (judge_slip(job_, triple).verdict == Verdict::fail)
            return;
        const auto weighed = weigh(job_, triple);
        if (weighed.kind != kind)
            return;
        const auto key = order_key(job_, triple, weighed);
        if (!best || key < best->key)
            best = Ranked{triple, key};
    }

    const Job& job_;
    const Runners& runners_;
    const trade::BodyFacts& body_;
    std::span<const trade::Trial> tried_;
};

Finder::Finder(const Job& job, const trade::Rack& rack, const Trials& trials,
               const Windows& windows)
    : job_(job), rack_(rack), trials_(trials), windows_(windows),
      detail_(detail_for(*job.question)),
      runners_(Runners::Which::running, job, rack, windows, detail_) {
    for (const auto& candidate : job.holes) {
        widest_surely_ = std::max(widest_surely_, candidate.hole.lo);
        widest_perhaps_ = std::max(widest_perhaps_, candidate.hole.hi);
    }
}

std::optional<Outcome> Finder::outcome_of(const trade::BodyFacts& body) const {
    const auto alone = weigh(job_, without_pilot(body));
    if (!alone.kind)
        return std::nullopt;
    const bool fails = alone.kind == AnswerKind::closest;
    if (!fails)
        if (const auto kind = with_a_runner(body, at_best(alone)))
            return Outcome{*kind, true, {}};
    const auto least = fails ? alone.shortfall : Shortfall{};
    if (const auto pilotless = over_holes(job_, without_pilot(body)))
        return Outcome{pilotless->kind(), false, least};
    if (!fails && a_misfit_comes_near(body))
        return Outcome{AnswerKind::closest, false, least};
    return std::nullopt;
}

std::optional<AnswerKind> Finder::with_a_runner(const trade::BodyFacts& body,
                                                AnswerKind at_best) const {
    const auto by_teeth = this->by_teeth(body);
    if (!by_teeth)
        return std::nullopt;
    at_best = std::max(at_best, *by_teeth);
    const Search search(*this, runners_, body);
    std::optional<AnswerKind> best;
    search.each_own([&](const Runner& runner) {
        const auto kind = search.kind_with(runner);
        if (kind && *kind <= AnswerKind::measure_first)
            best = std::min(best.value_or(*kind), *kind);
    });
    if (best == at_best)
        return best;
    const auto other = with_any_runner(search, body, at_best);
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

// Alike bodies are put to the runners once, unless some pilot was tried or found in them.
std::optional<AnswerKind> Finder::with_any_runner(const Search& search,
                                                  const trade::BodyFacts& body,
                                                  AnswerKind at_best) const {
    if (search.has_own())
        return search.least_kind(at_best);
    Seating seating{body.cut_dia,      body.bore,      body.bore_depth, body.set_screw,
                    body.set_screw_at, body.retention, at_best};
    if (job_.head && body.cut_dia &&
        (*body.cut_dia).lo - job_.head->hi >= runners_.most_clearance())
        seating.cut_dia = {};
    const auto [place, is_new] = known_.try_emplace(seating);
    if (is_new)
        place->second = search.least_kind(at_best);
    return place->second;
}

// Where every hole fails the body, a pilot that runs in none of them is judged without.
bool Finder::a_misfit_comes_near(const trade::BodyFacts& body) const {
    const auto* misfits = this->misfits();
    if (!misfits)
        return false;
    const Search search(*this, *misfits, body);
    const auto is_near = [&](const Runner& runner) {
        return search.kind_with(runner) == AnswerKind::closest;
    };
    bool found = false;
    search.each_own([&](const Runner& runner) { found = found || is_near(runner); });
    return found || misfits->any_at(AnswerKind::measure_first, body, is_near);
}

std::optional<Ranked> Finder::best_of(const trade::BodyFacts& body, const Outcome& outcome,
                                      const OrderKey* bound) const {
    if (outcome.by_pilot)
        return Search(*this, runners_, body).best(outcome.kind, {}, bound);
    if (outcome.kind == AnswerKind::closest)
        if (const auto best = best_closest(body, outcome.least))
            return best;
    return over_holes(job_, without_pilot(body));
}

std::optional<Ranked> Finder::best_closest(const trade::BodyFacts& body,
                                           const Shortfall& least) const {
    auto best = Search(*this, runners_, body).best(AnswerKind::closest, least, nullptr);
    if (alone(job_, body) == AnswerKind::closest || !misfits())
        return best; // a misfit would be a second failure
    const auto misfit = Search(*this, *misfits(), body).best(AnswerKind::closest, {}, nullptr);
    return misfit && (!best || misfit->key < best->key) ? misfit : best;
}

// Only a pilot that may choose its hole can go without.
const Runners* Finder::misfits() const {
    if (job_.question->hole.kind != HoleKind::chosen)
        return nullptr;
    if (!misfits_)
        misfits_.emplace(Runners::Which::misfits, job_, rack_, windows_, detail_);
    return &*misfits_;
}

int Finder::pilots_that_do(const trade::BodyFacts& body) const {
    const Search search(*this, runners_, body);
    std::set<std::int64_t> pilots;
    const auto count = [&](const Runner& runner) {
        const auto number = runners_.pilot(runner).number;
        if (pilots.count(number) > 0)
            return false;
        const auto kind = search.kind_with(runner);
        if (kind && *kind <= AnswerKind::measure_first)
            pilots.insert(number);
        return false;
    };
    search.each_own(count);
    (void)runners_.any_at(AnswerKind::measure_first, body, count);
    return static_cast<int>(pilots.size());
}

} // namespace match
