// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/best.hpp"

#include <algorithm>

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

Triple with_pilot(const Tools& tools, const trade::Body& body, const trade::Pilot& pilot) {
    Triple triple{&body, &pilot, nullptr, {}, nullptr};
    if (const auto it = tools.tried.find({pilot.number, body.number}); it != tools.tried.end())
        triple.tried = it->second;
    if (pilot.in_body)
        triple.pilots_home = tools.body(*pilot.in_body);
    return triple;
}

bool would_do(const Ranked& ranked) {
    return *ranked.judged.kind <= AnswerKind::measure_first;
}

} // namespace

const trade::Body* Tools::body(std::int64_t number) const {
    const auto it = std::lower_bound(
        bodies.begin(), bodies.end(), number,
        [](const trade::Body& body, std::int64_t wanted) { return body.number < wanted; });
    return it != bodies.end() && it->number == number ? &*it : nullptr;
}

Tools load_tools(const trade::Rack& rack) {
    Tools tools{rack.bodies(), rack.pilots(), {}};
    for (const auto& trial : rack.trials())
        tools.tried[{trial.pilot, trial.body}] = trial.how;
    return tools;
}

std::vector<Ranked> pairs_of(const Job& job, const Tools& tools,
                             const std::vector<const trade::Pilot*>& pilots,
                             const trade::Body& body) {
    std::vector<Ranked> pairs;
    if (!trade::may_take_pilot(body)) {
        if (auto alone = over_holes(job, {&body, nullptr, nullptr, {}, nullptr}))
            pairs.push_back(*alone);
        return pairs;
    }
    for (const auto* pilot : pilots)
        if (auto pair = over_holes(job, with_pilot(tools, body, *pilot)))
            pairs.push_back(*pair);
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
    if (!trade::may_take_pilot(body))
        return result;
    const auto pilotless = over_holes(job, {&body, nullptr, nullptr, {}, nullptr});
    const bool only_closest = pilotless && *pilotless->judged.kind == AnswerKind::closest;
    if (pilotless && !(only_closest && result.best))
        result.best = pilotless;
    return result;
}

} // namespace match
