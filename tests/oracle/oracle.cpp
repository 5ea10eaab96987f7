// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Lists every body with every pilot and drill, keeps the best, counts.
#include "oracle/oracle.hpp"

#include <algorithm>

#include "oracle/candidate.hpp"

namespace oracle {

using match::AnswerKind;
using match::HoleKind;
using match::Verdict;

namespace {

// The holes that a body with this nose is judged in: the one given, else every drill that the
// screw and the nose allow, else none at all.
std::vector<HoleChoice> holes_for(const Context& context, const Triple& triple) {
    if (context.question.hole.kind != HoleKind::chosen) {
        return {given_hole(context.question, context.shop)};
    }
    std::vector<HoleChoice> fit;
    for (const trade::Drill& drill : drills_for_screw(context.question, context.shop)) {
        Triple with_drill = triple;
        with_drill.hole = {drill, drilled(context.shop, drill)};
        if (pilot_in_the_hole(context, with_drill).verdict != Verdict::fail) {
            fit.push_back(with_drill.hole);
        }
    }
    if (fit.empty()) {
        fit.push_back({});
    }
    return fit;
}

// How a hole does for the body alone: nothing against it, something unknown, one failure, two.
int cutter_rank(const Context& context, const Triple& triple) {
    const Verdict head = head_in_the_counterbore(context, triple).verdict;
    const Verdict teeth = teeth_reach_the_hole(context, triple).verdict;
    if (head == Verdict::fail && teeth == Verdict::fail) {
        return 3;
    }
    if (head == Verdict::fail || teeth == Verdict::fail) {
        return 2;
    }
    return head == Verdict::unknown || teeth == Verdict::unknown ? 1 : 0;
}

bool better_for_pilot_to_make(const Context& context, const Triple& a, const Triple& b) {
    const int rank_a = cutter_rank(context, a);
    const int rank_b = cutter_rank(context, b);
    if (rank_a != rank_b) {
        return rank_a < rank_b;
    }
    const int published_a = published_rank(context.question, a.hole.drill);
    const int published_b = published_rank(context.question, b.hole.drill);
    if (published_a != published_b) {
        return published_a < published_b;
    }
    if (a.hole.drill->diameter != b.hole.drill->diameter) {
        return a.hole.drill->diameter < b.hole.drill->diameter;
    }
    return a.hole.drill->kind < b.hole.drill->kind;
}

HoleChoice hole_for_pilot_to_make(const Context& context, const trade::Body& body) {
    if (context.question.hole.kind != HoleKind::chosen) {
        return given_hole(context.question, context.shop);
    }
    std::optional<Triple> best;
    for (const trade::Drill& drill : drills_for_screw(context.question, context.shop)) {
        const Triple triple{&body, nullptr, {drill, drilled(context.shop, drill)}};
        if (!best || better_for_pilot_to_make(context, triple, *best)) {
            best = triple;
        }
    }
    return best ? best->hole : HoleChoice{};
}

// The best of one body with one pilot, or without, over the drills.
std::optional<Candidate> best_over_holes(const Context& context, const trade::Body& body,
                                         const trade::Pilot* pilot) {
    std::optional<Candidate> best;
    for (const HoleChoice& hole : holes_for(context, {&body, pilot, {}})) {
        std::optional<Candidate> found = with_its_pilot(context, {&body, pilot, hole});
        if (found && (!best || comes_before(*found, *best))) {
            best = std::move(found);
        }
    }
    return best;
}

// All answers of one body, best first: one a pilot, and one for a pilot to be made (or a failure of
// the body's own) where no pilot is better.
std::vector<Candidate> answers_of(const Context& context, const trade::Body& body,
                                  const std::vector<trade::Pilot>& pilots) {
    std::vector<Candidate> all;
    if (!takes_pilots(body)) {
        if (std::optional<Candidate> only = best_over_holes(context, body, nullptr)) {
            all.push_back(std::move(*only));
        }
        return all;
    }
    for (const trade::Pilot& pilot : pilots) {
        if (std::optional<Candidate> found = best_over_holes(context, body, &pilot)) {
            all.push_back(std::move(*found));
        }
    }
    if (std::none_of(all.begin(), all.end(), would_do)) {
        const Triple alone{&body, nullptr, hole_for_pilot_to_make(context, body)};
        std::optional<Candidate> to_make = with_pilot_to_make(context, alone);
        // An owned pilot that comes closest says more than the bare body does.
        if (to_make && (to_make->kind != AnswerKind::closest || all.empty())) {
            all.push_back(std::move(*to_make));
        }
    }
    std::sort(all.begin(), all.end(), comes_before);
    return all;
}

OracleAnswer answer_of(const Candidate& candidate, const std::vector<Candidate>& of_this_body) {
    OracleAnswer answer;
    answer.kind = candidate.kind;
    answer.body = candidate.triple.body->number;
    if (candidate.triple.pilot != nullptr) {
        answer.pilot = candidate.triple.pilot->number;
    }
    for (const Candidate& other : of_this_body) {
        const bool another = other.triple.pilot != candidate.triple.pilot;
        if (another && other.triple.pilot != nullptr && would_do(other)) {
            ++answer.other_pilots;
        }
    }
    if (candidate.triple.hole.drill) {
        answer.drill = candidate.triple.hole.drill->name;
    }
    answer.size = candidate.size;
    for (const Ruling& ruling : candidate.rulings) {
        answer.rules.push_back({std::string(ruling.rule), ruling.judged.verdict});
    }
    return answer;
}

bool asked_for(const match::Question& question, const std::string& set) {
    return question.set.empty() || set == question.set;
}

struct Listed {
    Candidate candidate;
    OracleAnswer answer;
};

} // namespace

OracleReport judge(const match::Question& question, const match::Shop& shop,
                   const std::vector<trade::Body>& bodies, const std::vector<trade::Pilot>& pilots,
                   const std::vector<trade::Trial>& trials, Form form) {
    const Context context{question, shop, bodies, trials};
    std::vector<trade::Pilot> pilots_asked;
    for (const trade::Pilot& pilot : pilots) {
        if (asked_for(question, pilot.set)) {
            pilots_asked.push_back(pilot);
        }
    }
    OracleReport report;
    std::vector<Listed> listed;
    for (const trade::Body& body : bodies) {
        if (!asked_for(question, body.set)) {
            continue;
        }
        const std::vector<Candidate> all = answers_of(context, body, pilots_asked);
        if (all.empty()) {
            report.not_listed.push_back(body.number);
        }
        for (const Candidate& candidate : all) {
            listed.push_back({candidate, answer_of(candidate, all)});
            if (form == Form::bodies) {
                break;
            }
        }
    }
    std::sort(listed.begin(), listed.end(), [](const Listed& a, const Listed& b) {
        return comes_before(a.candidate, b.candidate);
    });
    for (Listed& one : listed) {
        ++report.counts[static_cast<std::size_t>(one.answer.kind)];
        report.answers.push_back(std::move(one.answer));
    }
    return report;
}

} // namespace oracle
