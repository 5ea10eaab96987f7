// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/match_json.hpp"

#include "present/screw_json.hpp"

namespace present {

namespace {

Json drill_json(const std::optional<trade::Drill>& drill) {
    if (!drill)
        return nullptr;
    return {{"name", drill->name}, {"diameter_mm", length_mm(drill->diameter)}};
}

Json rule_json(const match::Reason& reason) {
    return {{"rule", reason.rule},
            {"result", match::to_text(reason.result)},
            {"need", reason.need},
            {"have", reason.have}};
}

Json wanted_json(const match::Wanted& wanted) {
    return {{"counterbore_mm", range_mm(wanted.cutter)},
            {"published_mm", length_mm(wanted.published)},
            {"published_source", text_json(wanted.published_source)},
            {"drill", drill_json(wanted.drill)},
            {"hole_mm", range_mm(wanted.hole)},
            {"pilot_mm", range_mm(wanted.pilot)},
            {"depth_mm", length_mm(wanted.depth)}};
}

} // namespace

Json answer_json(const match::Answer& answer) {
    Json rules = Json::array();
    for (const auto& reason : answer.rules)
        rules.push_back(rule_json(reason));
    return {{"answer", match::to_text(answer.kind)},
            {"body", answer.body},
            {"pilot", answer.pilot ? Json(*answer.pilot) : Json(nullptr)},
            {"other_pilots", answer.other_pilots},
            {"drill", drill_json(answer.drill)},
            {"hole_mm", range_mm(answer.hole)},
            {"counterbore_mm", range_mm(answer.counterbore)},
            {"size", answer.size ? Json(match::to_text(*answer.size)) : Json(nullptr)},
            {"running_clearance_mm", range_mm(answer.running_clearance)},
            {"depth_mm", length_mm(answer.depth)},
            {"rules", rules},
            {"work", answer.work},
            {"notes", answer.notes},
            {"place", text_json(answer.place)}};
}

Json match_json(const match::Report& report, const trade::Screw& screw) {
    Json answers = Json::array();
    for (const auto& answer : report.answers)
        answers.push_back(answer_json(answer));
    Json counts = Json::object();
    for (std::size_t i = 0; i < match::k_answer_kinds; ++i)
        counts[std::string(match::to_text(static_cast<match::AnswerKind>(i)))] = report.counts[i];
    return {{"format", 1},
            {"screw", screw_json(screw)},
            {"wanted", wanted_json(report.wanted)},
            {"answers", answers},
            {"counts", counts}};
}

} // namespace present
