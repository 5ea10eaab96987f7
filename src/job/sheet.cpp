// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/sheet.hpp"

#include <algorithm>

#include "job/left.hpp"
#include "job/sheet_parts.hpp"
#include "job/steps.hpp"

namespace job {

using match::AnswerKind;

namespace {

using MakeSection = Section (*)(const Subject&);
constexpr MakeSection k_sections[]{tools_section, hole_section,    depth_section, running_section,
                                   left_section,  callout_section, seat_section};

const trade::Pilot* pilot_numbered(const match::Tools& tools,
                                   const std::optional<std::int64_t>& number) {
    for (const auto& pilot : tools.pilots)
        if (number && pilot.number == *number)
            return &pilot;
    return nullptr;
}

bool usable_kind(AnswerKind kind) {
    return kind == AnswerKind::ready || kind == AnswerKind::after_work;
}

bool no_tool_will_do(const std::optional<match::Answer>& answer) {
    return !answer || answer->kind == AnswerKind::make_pilot;
}

void add_section(Sheet& sheet, Section section) {
    if (!section.figures.empty() || !section.notes.empty())
        sheet.sections.push_back(std::move(section));
}

std::optional<length::Length> broken_edge(const Subject& subject) {
    const auto& hole = subject.answer.hole;
    if (!hole || !edge_break(subject.question.screw, *hole))
        return std::nullopt;
    return subject.question.screw.fillet_dia;
}

void fill(Sheet& sheet, const Subject& subject) {
    if (!sheet.usable()) {
        add_section(sheet, tools_section(subject));
        add_section(sheet, settle_section(subject.answer));
        return;
    }
    for (const auto make : k_sections)
        add_section(sheet, make(subject));
    sheet.steps = steps_for({subject.question, subject.answer, subject.body, subject.key(),
                             broken_edge(subject), subject.particulars.material, subject.unit});
}

} // namespace

bool Sheet::usable() const {
    return answer && usable_kind(answer->kind);
}

const Figure* Sheet::figure(std::string_view name) const {
    for (const auto& section : sections)
        for (const auto& found : section.figures)
            if (found.name == name)
                return &found;
    return nullptr;
}

Books read_books(const trade::Tables& tables, const trade::Screw& screw) {
    const auto size = screw.size ? screw.size->text : std::string();
    return {tables.feeds(), tables.torques(size), tables.nut_factors(), tables.grades(),
            tables.set_screws()};
}

std::optional<match::Answer> answer_for(const match::Report& report,
                                        std::optional<std::int64_t> body,
                                        std::optional<std::int64_t> pilot) {
    const auto wanted = [&](const match::Answer& answer) {
        return (!body || answer.body == *body) && (!pilot || answer.pilot == pilot);
    };
    const auto found = std::find_if(report.answers.begin(), report.answers.end(), wanted);
    if (found == report.answers.end() || found->kind == AnswerKind::closest)
        return std::nullopt;
    return *found;
}

Sheet make_sheet(const match::Question& question, const Particulars& particulars,
                 const match::Report& report, const std::optional<match::Answer>& answer,
                 const match::Tools& tools, const match::Shop& shop, const Books& books,
                 length::Unit unit) {
    Sheet sheet{question, particulars, answer, {}, {}, {}};
    if (answer) {
        const Subject subject{question,
                              particulars,
                              *answer,
                              *tools.body(answer->body),
                              pilot_numbered(tools, answer->pilot),
                              shop,
                              books,
                              unit};
        fill(sheet, subject);
    }
    if (no_tool_will_do(answer)) {
        sheet.ways = other_ways(question, report, particulars.on, unit);
        add_section(sheet, cone_section(question, particulars, report.wanted, books));
    }
    return sheet;
}

} // namespace job
