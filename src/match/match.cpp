// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Match: every body judged, the best answers put in order, and those that are shown spelled out.
#include <algorithm>

#include "match/matcher.hpp"
#include "match/shelf.hpp"
#include "match/spell_out.hpp"
#include "match/wanted.hpp"

namespace match {

namespace {

// Whole records of a found triple, read when it is shown.
struct ReadRecords {
    ReadRecords(const trade::Rack& rack, const Triple& triple)
        : body(rack.body(triple.body->number)) {
        if (!triple.pilot)
            return;
        pilot = rack.pilot(triple.pilot->number);
        if (triple.pilot->in_body != 0)
            home = rack.body(triple.pilot->in_body);
    }
    [[nodiscard]] Records records() const {
        return {body ? &*body : nullptr, pilot ? &*pilot : nullptr, home ? &*home : nullptr};
    }

    std::optional<trade::Body> body;
    std::optional<trade::Pilot> pilot;
    std::optional<trade::Body> home;
};

} // namespace

Matcher::Matcher(const trade::Rack& rack, const Shop& shop, length::Unit unit)
    : rack_(rack), shop_(shop), unit_(unit), trials_(rack.trials()), markings_(rack.markings()),
      kept_(rack, trials_) {}

Findings Matcher::find(const Job& job, std::size_t most) const {
    const auto& set = job.question->set;
    return set.empty() ? search(job, kept_, most) : search(job, Shelf(rack_, set), trials_, most);
}

Answer Matcher::answer_of(const Job& job, const Found& found) const {
    const auto& triple = found.ranked.triple;
    const ReadRecords read(rack_, triple);
    auto answer = spell_out(job, triple, read.records(), unit_);
    answer.other_pilots = found.other_pilots;
    return answer;
}

Report Matcher::match(const Question& question, std::size_t most) const {
    const Job job = make_job(question, shop_, markings_.naming(question.screw));
    const auto findings = find(job, most);
    Report report;
    report.wanted = wanted_for(job, unit_);
    report.counts = findings.counts;
    for (const auto& found : findings.first)
        report.answers.push_back(answer_of(job, found));
    return report;
}

std::optional<Answer> Matcher::first_that(const Question& question,
                                          const std::function<bool(const Ranked&)>& wanted) const {
    const Job job = make_job(question, shop_, markings_.naming(question.screw));
    const auto findings = find(job, 0);
    const auto found = std::find_if(findings.first.begin(), findings.first.end(),
                                    [&](const Found& one) { return wanted(one.ranked); });
    return found == findings.first.end() ? std::nullopt : std::optional(answer_of(job, *found));
}

Report match(const Question& question, const Shop& shop, const trade::Rack& rack, length::Unit unit,
             std::size_t most) {
    return Matcher(rack, shop, unit).match(question, most);
}

} // namespace match
