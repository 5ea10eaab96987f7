// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Match: every body judged, the best answers put in order, and those that are shown spelled out.
#include <algorithm>

#include "match/matcher.hpp"
#include "match/search.hpp"
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
    : rack_(rack), shop_(shop), unit_(unit), trials_(rack.trials()) {}

Report Matcher::match(const Question& question, std::size_t most) const {
    const Job job = make_job(question, shop_);
    const auto of_set =
        question.set.empty() ? nullptr : std::make_unique<Shelf>(rack_, question.set);
    const auto findings = search(job, of_set ? *of_set : rack_, trials_, most);
    Report report;
    report.wanted = wanted_for(job);
    report.counts = findings.counts;
    for (const auto& found : findings.first) {
        const auto& triple = found.ranked.triple;
        const ReadRecords read(rack_, triple);
        report.answers.push_back(spell_out(job, triple, read.records(), unit_));
        report.answers.back().other_pilots = found.other_pilots;
    }
    return report;
}

Report match(const Question& question, const Shop& shop, const trade::Rack& rack, length::Unit unit,
             std::size_t most) {
    return Matcher(rack, shop, unit).match(question, most);
}

} // namespace match
