// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/best.hpp"

#include "match/rules.hpp"

namespace match {

namespace {

// Keeps the better of two; the first found wins nothing, the order decides.
void keep_better(const Job& job, std::optional<Ranked>& best, const Triple& triple) {
    const Weighed weighed = weigh(job, triple);
    if (!weighed.kind)
        return;
    const OrderKey key = order_key(job, triple, weighed);
    if (!best || key < best->key)
        best = Ranked{triple, key};
}

} // namespace

std::optional<Ranked> over_holes(const Job& job, Triple triple) {
    std::optional<Ranked> best;
    const bool chosen = job.question->hole.kind == HoleKind::chosen;
    bool suits_one = false;
    for (const auto& hole : job.holes) {
        triple.hole = &hole;
        if (chosen && triple.has_pilot() && !hole.pilots.takes(triple.pilot_dia()))
            continue;
        suits_one = true;
        keep_better(job, best, triple);
    }
    if (suits_one)
        return best;
    triple.hole = nullptr;
    keep_better(job, best, triple);
    return best;
}

bool would_do(const Ranked& ranked) {
    return ranked.kind() <= AnswerKind::measure_first;
}

std::optional<AnswerKind> alone(const Job& job, const trade::BodyFacts& body) {
    return weigh(job, {&body, nullptr, nullptr, {}}).kind;
}

std::optional<Ranked> pair_of(const Job& job, const Triple& triple,
                              std::optional<AnswerKind> at_best) {
    if (!at_best)
        return std::nullopt;
    const bool fits = judge_slip(job, triple).verdict != Verdict::fail;
    if (!fits && *at_best == AnswerKind::closest)
        return std::nullopt; // a second failure
    return over_holes(job, triple);
}

Triple with_pilot(const Tools& tools, const trade::BodyFacts& body,
                  const trade::PilotFacts& pilot) {
    Triple triple{&body, &pilot, nullptr, {}};
    if (const auto it = tools.tried.find({pilot.number, body.number}); it != tools.tried.end())
        triple.tried = it->second;
    return triple;
}

Pilots all_pilots(const Tools& tools) {
    Pilots pilots;
    for (const auto& pilot : tools.pilot_facts)
        pilots.push_back(&pilot);
    return pilots;
}

std::vector<Ranked> pairs_of(const Job& job, const Tools& tools, const Pilots& pilots,
                             const trade::BodyFacts& body) {
    std::vector<Ranked> pairs;
    if (!trade::may_take_pilot(body)) {
        if (auto own = over_holes(job, {&body, nullptr, nullptr, {}}))
            pairs.push_back(*own);
        return pairs;
    }
    const auto at_best = alone(job, body);
    for (const auto* pilot : pilots)
        if (auto pair = pair_of(job, with_pilot(tools, body, *pilot), at_best))
            pairs.push_back(*pair);
    return pairs;
}

BestOfBody best_of(const Job& job, const Tools& tools, const Pilots& pilots,
                   const trade::BodyFacts& body) {
    BestOfBody result;
    int would = 0;
    for (const auto& pair : pairs_of(job, tools, pilots, body)) {
        would += would_do(pair) ? 1 : 0;
        if (!result.best || pair.key < result.best->key)
            result.best = pair;
    }
    if (would > 0) {
        result.other_pilots = would - 1;
        return result;
    }
    if (!trade::may_take_pilot(body) || !alone(job, body))
        return result;
    const auto pilotless = over_holes(job, {&body, nullptr, nullptr, {}});
    const bool only_closest = pilotless && pilotless->kind() == AnswerKind::closest;
    if (pilotless && !(only_closest && result.best))
        result.best = pilotless;
    return result;
}

} // namespace match
