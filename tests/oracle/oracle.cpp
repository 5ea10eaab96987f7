// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Lists every body with every pilot and drill, keeps the best, counts.
#include "oracle/oracle.hpp"

#include <algorithm>

#include "oracle/met.hpp"

namespace oracle {

using match::AnswerKind;
using match::HoleKind;
using match::Verdict;

namespace {

// The holes that a triple is judged in: the one given, else every drill that the screw and what
// runs in the hole allow, else none at all.
std::vector<HoleChoice> holes_for(const Context& context, const Triple& triple) {
    if (context.question.hole.kind != HoleKind::chosen) {
        return {given_hole(context.question, context.shop)};
    }
    const bool nothing_runs = !nose_of(triple);
    std::vector<HoleChoice> fit;
    for (const HoleChoice& hole : holes_to_choose(context.question, context.shop)) {
        const Triple with_hole{triple.body, triple.pilot, hole};
        if (nothing_runs || pilot_in_the_hole(context, with_hole).verdict != Verdict::fail) {
            fit.push_back(hole);
        }
    }
    if (fit.empty()) {
        fit.push_back({});
    }
    return fit;
}

using JudgeOne = std::optional<Candidate> (*)(const Context&, const Triple&);

// The best of one body with one pilot, or without, over the drills.
std::optional<Candidate> best_over_holes(const Context& context, const Triple& triple,
                                         JudgeOne judge_one) {
    std::optional<Candidate> best;
    for (const HoleChoice& hole : holes_for(context, triple)) {
        std::optional<Candidate> found = judge_one(context, {triple.body, triple.pilot, hole});
        if (found && (!best || comes_before(*found, *best))) {
            best = std::move(found);
        }
    }
    return best;
}

// The body with every pilot, or as it is if none goes in it.
std::vector<Candidate> pairs_of(const Context& context, const trade::Body& body,
                                const std::vector<trade::Pilot>& pilots) {
    std::vector<Triple> pairs;
    if (takes_pilots(body)) {
        for (const trade::Pilot& pilot : pilots) {
            pairs.push_back({&body, &pilot, {}});
        }
    } else {
        pairs.push_back({&body, nullptr, {}});
    }
    std::vector<Candidate> all;
    for (const Triple& pair : pairs) {
        if (std::optional<Candidate> found = best_over_holes(context, pair, with_its_pilot)) {
            all.push_back(std::move(*found));
        }
    }
    return all;
}

// One answer for the body: its best pair, unless no owned pilot would do and one can be made, or
// the fault is the body's own.
std::optional<Candidate> answer_for(const Context& context, const trade::Body& body,
                                    const std::vector<Candidate>& pairs) {
    std::optional<Candidate> best;
    for (const Candidate& pair : pairs) {
        if (!best || comes_before(pair, *best)) {
            best = pair;
        }
    }
    if (!takes_pilots(body) || (best && would_do(*best))) {
        return best;
    }
    std::optional<Candidate> to_make =
        best_over_holes(context, {&body, nullptr, {}}, with_pilot_to_make);
    // An owned pilot that comes closest says more than the bare body does.
    const bool bare_says_more = to_make && (!best || to_make->kind != AnswerKind::closest);
    return bare_says_more ? to_make : best;
}

OracleAnswer answer_of(const Candidate& candidate) {
    OracleAnswer answer;
    answer.kind = candidate.kind;
    answer.body = candidate.triple.body->number;
    if (candidate.triple.pilot != nullptr) {
        answer.pilot = candidate.triple.pilot->number;
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

// Those that would do beside the one that is answered.
int other_pilots(const Candidate& answer, const std::vector<Candidate>& pairs) {
    int others = 0;
    for (const Candidate& pair : pairs) {
        if (pair.triple.pilot != answer.triple.pilot && would_do(pair)) {
            ++others;
        }
    }
    return others;
}

bool asked_for(const match::Question& question, const std::string& set) {
    return question.set.empty() || set == question.set;
}

struct Listed {
    Candidate candidate;
    OracleAnswer answer;
};

std::vector<Listed> listed_of(const Context& context, const trade::Body& body,
                              const std::vector<trade::Pilot>& pilots, Form form) {
    const std::vector<Candidate> pairs = pairs_of(context, body, pilots);
    std::vector<Listed> listed;
    if (form == Form::pairs) {
        for (const Candidate& pair : pairs) {
            listed.push_back({pair, answer_of(pair)});
        }
    } else if (const std::optional<Candidate> one = answer_for(context, body, pairs)) {
        listed.push_back({*one, answer_of(*one)});
        listed.front().answer.other_pilots = other_pilots(*one, pairs);
    }
    return listed;
}

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
        const std::vector<Listed> of_body = listed_of(context, body, pilots_asked, form);
        for (const trade::Pilot& pilot : pilots_asked) {
            report.met["unlike pair"] += unlike_pair(context, {&body, &pilot, {}}) ? 1 : 0;
        }
        if (of_body.empty()) {
            report.not_listed.push_back(body.number);
        }
        listed.insert(listed.end(), of_body.begin(), of_body.end());
    }
    std::sort(listed.begin(), listed.end(), [](const Listed& a, const Listed& b) {
        return comes_before(a.candidate, b.candidate);
    });
    for (const Listed& one : listed) {
        ++report.counts[static_cast<std::size_t>(one.answer.kind)];
        report.answers.push_back(one.answer);
        for (const std::string& what : met_by(context, one.candidate)) {
            ++report.met[what];
        }
    }
    return report;
}

} // namespace oracle
