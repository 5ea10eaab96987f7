// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/identify_json.hpp"

namespace present {

namespace {

Json reasons_json(const std::vector<match::Reason>& reasons, const char* name) {
    Json list = Json::array();
    for (const auto& reason : reasons)
        list.push_back({{name, reason.rule},
                        {"result", match::to_text(reason.result)},
                        {"need", reason.need},
                        {"have", reason.have}});
    return list;
}

Json published_json(const match::Likeness& likeness) {
    return {{"name", likeness.name},
            {"size", text_json(likeness.size)},
            {"hole", text_json(likeness.hole)},
            {"cut_dia_mm", range_mm(likeness.cut_dia)},
            {"pilot_dia_mm", range_mm(likeness.pilot_dia)},
            {"result", match::to_text(likeness.result)},
            {"figures", reasons_json(likeness.figures, "figure")},
            {"source", likeness.origin.source},
            {"confidence", likeness.origin.confidence},
            {"note", text_json(likeness.origin.note)}};
}

Json use_json(const match::ToolUse& use) {
    return {{"surety", match::to_text(use.surety)},
            {"screw", use.screw},
            {"size", use.size},
            {"form", use.form},
            {"series", use.series},
            {"withdrawn", use.withdrawn},
            {"hole", text_json(use.hole)},
            {"drill", use.drill ? Json(use.drill->name) : Json(nullptr)},
            {"cutter_size",
             use.class_of_size ? Json(match::to_text(*use.class_of_size)) : Json(nullptr)},
            {"rules", reasons_json(use.reasons, "rule")}};
}

Json identity_json(const match::ToolIdentity& identity) {
    Json published = Json::array();
    for (const auto& likeness : identity.published)
        published.push_back(published_json(likeness));
    Json uses = Json::array();
    for (const auto& use : identity.uses)
        uses.push_back(use_json(use));
    return {{"likely", identity.best}, {"uses", uses}, {"published", published}};
}

Json head_json(const match::HeadMatch& match) {
    return {{"size", match.head.size.text},
            {"form", match.head.form},
            {"series", match.head.series},
            {"withdrawn", match.withdrawn},
            {"result", match::to_text(match.result())},
            {"figures", reasons_json(match.figures, "figure")},
            {"confidence", match.head.origin.confidence}};
}

Json decider_json(const std::optional<match::Decider>& decider) {
    if (!decider)
        return nullptr;
    return {{"measure", decider->what},
            {"pairs_told_apart", decider->apart},
            {"pairs", decider->pairs},
            {"values", decider->values}};
}

} // namespace

Json tool_identity_json(const match::ToolIdentity& identity) {
    Json json = {{"format", 1}};
    json.update(identity_json(identity));
    return json;
}

Json identified_tools_json(const std::vector<IdentifiedTool>& tools) {
    Json list = Json::array();
    for (const auto& tool : tools) {
        Json json = {{"number", tool.number}};
        json.update(identity_json(tool.identity));
        list.push_back(json);
    }
    return {{"format", 1}, {"tools", list}};
}

Json screw_identity_json(const match::ScrewIdentity& identity) {
    Json left = Json::array();
    for (const auto& match : identity.left)
        left.push_back(head_json(match));
    Json conflict = Json::array();
    for (const auto& match : identity.conflict)
        conflict.push_back(head_json(match));
    return {{"format", 1},
            {"agree", left},
            {"conflict", conflict},
            {"decides", decider_json(identity.decider)},
            {"alike", identity.alike}};
}

} // namespace present
