// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Match: every body judged, the best answers put in order, and those that are shown spelled out.
#include <algorithm>

#include "match/best.hpp"
#include "match/notes.hpp"
#include "match/wanted.hpp"
#include "trade/text.hpp"

namespace match {

namespace {

constexpr std::size_t k_most_closest = 5;

struct Found {
    Ranked ranked;
    int other_pilots = 0;
};

bool in_set(const std::string& asked, const std::string& set) {
    return asked.empty() || trade::folded(asked) == trade::folded(set);
}

std::vector<const trade::Pilot*> pilots_of(const Tools& tools, const std::string& set) {
    std::vector<const trade::Pilot*> pilots;
    for (const auto& pilot : tools.pilots)
        if (in_set(set, pilot.set))
            pilots.push_back(&pilot);
    return pilots;
}

std::vector<Found> find_all(const Job& job, const Tools& tools, bool pairs) {
    std::vector<Found> found;
    const auto& set = job.question->set;
    const auto pilots = pilots_of(tools, set);
    for (const auto& body : tools.bodies) {
        if (!in_set(set, body.set))
            continue;
        if (pairs) {
            for (auto& pair : pairs_of(job, tools, pilots, body))
                found.push_back({pair, 0});
        } else if (auto result = best_of(job, tools, pilots, body); result.best) {
            found.push_back({*result.best, result.other_pilots});
        }
    }
    std::sort(found.begin(), found.end(),
              [](const Found& a, const Found& b) { return a.ranked.key < b.ranked.key; });
    return found;
}

Answer spell_out(const Job& job, const Found& found, length::Unit unit) {
    const auto& judged = found.ranked.judged;
    const auto& triple = judged.triple;
    Answer answer;
    answer.kind = *judged.kind;
    answer.body = triple.body->number;
    if (triple.pilot)
        answer.pilot = triple.pilot->number;
    answer.seat = seat_of(triple);
    answer.pilot_dia = triple.pilot_dia();
    if (answer.seat == Seat::free)
        answer.pilot_place = triple.pilot->place;
    answer.other_pilots = found.other_pilots;
    if (triple.hole) {
        answer.drill = triple.hole->drill;
        answer.hole = triple.hole->hole;
    }
    answer.counterbore = trade::range_of(triple.body->cut_dia);
    answer.size = size_of(job, triple);
    if (answer.pilot_dia && triple.hole)
        answer.running_clearance = triple.hole->hole - *answer.pilot_dia;
    answer.depth = job.depth;
    answer.rules = reasons_of(job, judged, unit);
    answer.work = work_of(job, judged);
    answer.notes = notes_of(job, triple, unit);
    answer.place = triple.body->place;
    return answer;
}

} // namespace

Report match(const Question& question, const Shop& shop, const trade::Rack& rack, length::Unit unit,
             std::size_t most, bool pairs) {
    return match(question, shop, load_tools(rack), unit, most, pairs);
}

Report match(const Question& question, const Shop& shop, const Tools& tools, length::Unit unit,
             std::size_t most, bool pairs) {
    const Job job = make_job(question, shop);
    Report report;
    report.wanted = wanted_for(job);
    std::size_t closest = 0;
    for (const auto& found : find_all(job, tools, pairs)) {
        const auto kind = *found.ranked.judged.kind;
        ++report.counts[static_cast<std::size_t>(kind)];
        if (most != 0 && report.answers.size() >= most)
            continue;
        if (kind == AnswerKind::closest && closest++ >= k_most_closest)
            continue;
        report.answers.push_back(spell_out(job, found, unit));
    }
    return report;
}

} // namespace match
