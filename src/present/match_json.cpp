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

// For what comes by the thousand: a list of pairs is made as arrays first, and an object that grows
// copies all that is in it.
Json::object_t& members_of(Json& object, std::size_t count) {
    object = Json::object();
    auto& members = object.get_ref<Json::object_t&>();
    members.reserve(count);
    return members;
}

Json rule_json(const match::Reason& reason) {
    Json json;
    auto& rule = members_of(json, 4);
    rule.emplace_back("rule", reason.rule);
    rule.emplace_back("result", match::to_text(reason.result));
    rule.emplace_back("need", reason.need);
    rule.emplace_back("have", reason.have);
    return json;
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

// What is assumed comes first.
Json notes_json(const match::Answer& answer) {
    auto notes = answer.assumed;
    for (const auto* more : {&answer.notes, &answer.floor_notes})
        notes.insert(notes.end(), more->begin(), more->end());
    return notes;
}

Json answer_json(const match::Answer& answer) {
    Json::array_t rules;
    rules.reserve(answer.rules.size());
    for (const auto& reason : answer.rules)
        rules.push_back(rule_json(reason));
    Json json;
    auto& members = members_of(json, 14);
    members.emplace_back("answer", match::to_text(answer.kind));
    members.emplace_back("body", answer.body);
    members.emplace_back("pilot", answer.pilot ? Json(*answer.pilot) : Json(nullptr));
    members.emplace_back("other_pilots", answer.other_pilots);
    members.emplace_back("drill", drill_json(answer.drill));
    members.emplace_back("hole_mm", range_mm(answer.hole));
    members.emplace_back("counterbore_mm", range_mm(answer.counterbore));
    members.emplace_back("size", answer.size ? Json(match::to_text(*answer.size)) : Json(nullptr));
    members.emplace_back("running_clearance_mm", range_mm(answer.running_clearance));
    members.emplace_back("depth_mm", length_mm(answer.depth));
    members.emplace_back("rules", std::move(rules));
    members.emplace_back("work", answer.work);
    members.emplace_back("notes", notes_json(answer));
    members.emplace_back("place", text_json(answer.place));
    return json;
}

Json match_json(const match::Report& report, const trade::Screw& screw) {
    Json::array_t answers;
    answers.reserve(report.answers.size());
    for (const auto& answer : report.answers)
        answers.push_back(answer_json(answer));
    Json counts = Json::object();
    for (std::size_t i = 0; i < match::k_answer_kinds; ++i)
        counts[std::string(match::to_text(static_cast<match::AnswerKind>(i)))] = report.counts[i];
    Json json;
    auto& members = members_of(json, 5);
    members.emplace_back("format", 1);
    members.emplace_back("screw", screw_json(screw));
    members.emplace_back("wanted", wanted_json(report.wanted));
    members.emplace_back("answers", std::move(answers));
    members.emplace_back("counts", std::move(counts));
    return json;
}

} // namespace present
