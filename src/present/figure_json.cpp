// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/figure_json.hpp"

#include <variant>

namespace present {

namespace {

const char* key_of(job::Kind kind) {
    switch (kind) {
    case job::Kind::angle:
        return "value_deg";
    case job::Kind::area:
        return "value_mm2";
    case job::Kind::surface_speed:
        return "value_m_per_min";
    case job::Kind::rotation:
        return "value_rpm";
    case job::Kind::torque:
        return "value_n_m";
    case job::Kind::force:
        return "value_n";
    case job::Kind::pressure:
        return "value_mpa";
    case job::Kind::time:
        return "value_s";
    case job::Kind::number:
        break;
    }
    return "value";
}

void put_value(Json& json, const job::Value& value) {
    if (const auto* text = std::get_if<std::string>(&value))
        json["value"] = text_json(*text);
    else if (const auto* range = std::get_if<length::Range>(&value))
        json["value_mm"] = range_mm(*range);
    else if (const auto* measure = std::get_if<job::Measure>(&value))
        json[key_of(measure->kind)] = Json::array({measure->lo, measure->hi});
}

} // namespace

Json figure_json(const job::Figure& figure) {
    Json json = {{"name", figure.name}};
    put_value(json, figure.value);
    Json inputs = Json::array();
    for (const auto& input : figure.inputs) {
        Json entry = {{"name", input.name}};
        put_value(entry, input.value);
        inputs.push_back(entry);
    }
    json["formula"] = figure.formula;
    json["inputs"] = inputs;
    json["source"] = figure.source;
    return json;
}

} // namespace present
