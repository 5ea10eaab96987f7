// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/chart.hpp"

#include "match/matcher.hpp"
#include "match/shelf.hpp"

namespace match {

std::vector<ChartEntry> chart(const std::vector<Asked>& asked, const Shop& shop,
                              const trade::Rack& rack, length::Unit unit) {
    const RackFor many(rack, asked.size());
    const Matcher matcher(many.rack(), shop, unit);
    std::vector<ChartEntry> entries;
    for (const auto& one : asked) {
        const auto& screw = one.question.screw;
        ChartEntry entry{one.screw,  one.hole,    screw.form,  screw.series,
                         screw.size, screw.pitch, std::nullopt};
        auto report = matcher.match(one.question, 1);
        if (!report.answers.empty() && report.answers.front().kind != AnswerKind::closest)
            entry.best = std::move(report.answers.front());
        entries.push_back(std::move(entry));
    }
    return entries;
}

} // namespace match
