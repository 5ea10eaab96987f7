// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Every body with every pilot, each pair an answer.
#include <algorithm>

#include "match/best.hpp"
#include "match/markings.hpp"
#include "match/spell_out.hpp"
#include "match/wanted.hpp"
#include "trade/text.hpp"

namespace match {

namespace {

bool in_set(const std::string& asked, const std::string& set) {
    return asked.empty() || trade::folded(asked) == trade::folded(set);
}

trade::NumberSet marked_for(const trade::Screw& screw, const Tools& tools) {
    std::vector<trade::Marked> marked;
    for (const auto& body : tools.bodies)
        if (!body.marking.empty())
            marked.push_back({body.marking, static_cast<std::int32_t>(body.number)});
    return Markings(marked).naming(screw);
}

std::vector<Ranked> every_pair(const Job& job, const Tools& tools) {
    const auto& set = job.question->set;
    Pilots pilots;
    for (const auto& pilot : tools.pilots)
        if (in_set(set, pilot.set))
            pilots.push_back(&tools.facts(pilot));
    std::vector<Ranked> all;
    for (const auto& body : tools.bodies) {
        if (!in_set(set, body.set))
            continue;
        const auto pairs = pairs_of(job, tools, pilots, tools.facts(body));
        all.insert(all.end(), pairs.begin(), pairs.end());
    }
    std::sort(all.begin(), all.end(),
              [](const Ranked& a, const Ranked& b) { return a.key < b.key; });
    return all;
}

} // namespace

Report match_pairs(const Question& question, const Shop& shop, const Tools& tools,
                   length::Unit unit, std::size_t most) {
    const Job job = make_job(question, shop, marked_for(question.screw, tools));
    Report report;
    report.wanted = wanted_for(job, unit);
    std::size_t closest = 0;
    for (const auto& pair : every_pair(job, tools)) {
        ++report.counts[static_cast<std::size_t>(pair.kind())];
        if (most != 0 && report.answers.size() >= most)
            continue;
        if (most != 0 && pair.kind() == AnswerKind::closest && closest++ >= k_most_closest)
            continue;
        report.answers.push_back(spell_out(job, pair.triple, tools.records(pair.triple), unit));
    }
    return report;
}

} // namespace match
