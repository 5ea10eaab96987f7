// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/chart.hpp"

namespace match {

std::vector<ChartEntry> chart(const std::vector<Asked>& asked, const Shop& shop, const Tools& tools,
                              length::Unit unit) {
    std::vector<ChartEntry> entries;
    for (const auto& one : asked) {
        const auto& screw = one.question.screw;
        ChartEntry entry{one.screw,  one.hole,    screw.form,  screw.series,
                         screw.size, screw.pitch, std::nullopt};
        auto report = match(one.question, shop, tools, unit, 1, false);
        if (!report.answers.empty() && report.answers.front().kind != AnswerKind::closest)
            entry.best = std::move(report.answers.front());
        entries.push_back(std::move(entry));
    }
    return entries;
}

} // namespace match
