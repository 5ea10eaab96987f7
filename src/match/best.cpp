// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/best.hpp"

#include "match/rules.hpp"

namespace match {

namespace {

// Keeps the better of two; the first found wins nothing, the order decides.
void keep_better(const Job& job, std::optional<Ranked>& best, const Triple& triple) {
    const Judged judged = judge(job, triple);
    if (!judged.kind)
        return;
    const OrderKey key = order_key(job, judged);
    if (!best || key < best->key)
        best = Ranked{judged, key};
}

// A pilot chooses among the holes that it can run in; where none suits, it has no hole.
std::optional<Ranked> over_holes(const Job& job, Triple triple) {
    std::optional<Ranked> best;
    const bool chosen = job.question->hole.kind == HoleKind::chosen;
    bool suits_one = false;
    for (const auto& hole : job.holes) {
        triple.hole = &hole;
        if (chosen && triple.has_pilot() && judge_running(job, triple).verdict == Verdict::fail)
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
    return *ranked.judged.kind <= AnswerKind::measure_first;
}

// What the body by itself comes to, before any pilot or hole; these can only make it worse.
std::optional<AnswerKind> alone(const Job& job, const trade::Body& body) {
    return judge(job, {&body, nullptr, nullptr, {}, nullptr}).kind;
}

} // namespace

Triple with_pilot(const Tools& tools, const trade::Body& body, const trade::Pilot& pilot) {
    Triple triple{&body, &pilot, nullptr, {}, nullptr};
    if (const auto it = tools.tried.find({pilot.number, body.number}); it != tools.tried.end())
        triple.tried = it->second;
    if (pilot.in_body)
        triple.pilots_home = tools.body(*pilot.in_body);
    return triple;
}

std::vector<Ranked> pairs_of(const Job& job, const Tools& tools,
                             const std::vector<const trade::Pilot*>& pilots,
                             const trade::Body& body) {
    std::vector<Ranked> pairs;
    if (!trade::may_take_pilot(body)) {
        if (auto own = over_holes(job, {&body, nullptr, nullptr, {}, nullptr}))
            pairs.push_back(*own);
        return pairs;
    }
    const auto at_best = alone(job, body);
    if (!at_best)
        return pairs;
    for (const auto* pilot : pilots) {
        const auto triple = with_pilot(tools, body, *pilot);
        const bool fits = judge_slip(job, triple).verdict != Verdict::fail;
        if (!fits && *at_best == AnswerKind::closest)
            continue; // a second failure
        if (auto pair = over_holes(job, triple))
            pairs.push_back(*pair);
    }
    return pairs;
}

BestOfBody best_of(const Job& job, const Tools& tools,
                   const std::vector<const trade::Pilot*>& pilots, const trade::Body& body) {
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
    const auto pilotless = over_holes(job, {&body, nullptr, nullptr, {}, nullptr});
    const bool only_closest = pilotless && *pilotless->judged.kind == AnswerKind::closest;
    if (pilotless && !(only_closest && result.best))
        result.best = pilotless;
    return result;
}

} // namespace match
