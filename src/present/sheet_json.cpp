// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/sheet_json.hpp"

#include "job/steps.hpp"
#include "present/figure_json.hpp"
#include "present/match_json.hpp"
#include "present/screw_json.hpp"

namespace present {

namespace {

Json section_json(const job::Section& section) {
    Json figures = Json::array();
    for (const auto& figure : section.figures)
        figures.push_back(figure_json(figure));
    return {{"title", section.title}, {"figures", figures}, {"notes", section.notes}};
}

Json ways_json(const std::vector<job::Way>& ways) {
    Json list = Json::array();
    for (const auto& way : ways)
        list.push_back({{"what", way.what},
                        {"how", way.how},
                        {"conditions", way.conditions},
                        {"caution", way.caution}});
    return list;
}

Json plan_json(const job::Plan& plan) {
    Json pull = Json::array();
    for (const auto& tool : plan.pull)
        pull.push_back(
            {{"kind", tool.kind}, {"number", tool.number}, {"place", text_json(tool.place)}});
    Json runs = Json::array();
    for (const auto& run : plan.runs)
        runs.push_back({{"operation", run.operation},
                        {"with", run.with},
                        {"holes", run.holes},
                        {"lines", run.lines}});
    return {{"pull", pull}, {"runs", runs}, {"not_ready", plan.not_ready}};
}

} // namespace

Json sheet_json(const job::Sheet& sheet) {
    const auto& job = sheet.particulars;
    Json sections = Json::array();
    for (const auto& section : sheet.sections)
        sections.push_back(section_json(section));
    return {{"format", 2},
            {"part", text_json(job.part)},
            {"note", text_json(job.note)},
            {"holes", job.count},
            {"material", text_json(job.material ? job.material->name : std::string())},
            {"material_asked_as", text_json(job.material ? job.material->asked_as : std::string())},
            {"screw", screw_json(sheet.question.screw)},
            {"answer", sheet.answer ? answer_json(*sheet.answer) : Json(nullptr)},
            {"sections", sections},
            {"steps", sheet.steps},
            {"other_ways", ways_json(sheet.ways)},
            {"cautions", job::cautions(job.material)}};
}

Json job_json(const job::Plan& plan, const std::vector<job::Sheet>& sheets) {
    Json list = Json::array();
    for (const auto& sheet : sheets)
        list.push_back(sheet_json(sheet));
    return {{"format", 2}, {"plan", plan_json(plan)}, {"sheets", list}};
}

} // namespace present
