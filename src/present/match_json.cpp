// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/match_json.hpp"

#include <utility>

#include "present/screw_json.hpp"

namespace present {

namespace {

Json drill_json(const std::optional<trade::Drill>& drill) {
    if (!drill)
        return nullptr;
    return {{"name", drill->name}, {"diameter_mm", length_mm(drill->diameter)}};
}

// Thousands of them: put together key by key, since a list of pairs is made as arrays first.
Json rule_json(const match::Reason& reason) {
    Json::object_t rule;
    rule.reserve(4);
    rule.emplace_back("rule", reason.rule);
    rule.emplace_back("result", match::to_text(reason.result));
    rule.emplace_back("need", reason.need);
    rule.emplace_back("have", reason.have);
    return rule;
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
    Json::array_t rules;
    rules.reserve(answer.rules.size());
    for (const auto& reason : answer.rules)
        rules.push_back(rule_json(reason));
    Json::object_t json;
    json.reserve(14);
    json.emplace_back("answer", match::to_text(answer.kind));
    json.emplace_back("body", answer.body);
    json.emplace_back("pilot", answer.pilot ? Json(*answer.pilot) : Json(nullptr));
    json.emplace_back("other_pilots", answer.other_pilots);
    json.emplace_back("drill", drill_json(answer.drill));
    json.emplace_back("hole_mm", range_mm(answer.hole));
    json.emplace_back("counterbore_mm", range_mm(answer.counterbore));
    json.emplace_back("size", answer.size ? Json(match::to_text(*answer.size)) : Json(nullptr));
    json.emplace_back("running_clearance_mm", range_mm(answer.running_clearance));
    json.emplace_back("depth_mm", length_mm(answer.depth));
    json.emplace_back("rules", std::move(rules));
    json.emplace_back("work", answer.work);
    json.emplace_back("notes", answer.notes);
    json.emplace_back("place", text_json(answer.place));
    return json;
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
            {"answers", std::move(answers)},
            {"counts", std::move(counts)}};
}

} // namespace present
