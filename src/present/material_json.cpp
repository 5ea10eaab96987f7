// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/material_json.hpp"

#include "job/feed.hpp"

namespace present {

namespace {

// A foot is .3048 m; divided last, so that the figure prints as short as it is.
double metres(int feet) {
    return feet * 3048 / 10'000.0;
}

Json feeds_json(const std::string& feed_class, const std::vector<trade::Feed>& feeds) {
    Json list = Json::array();
    for (const auto& feed : feeds)
        if (feed.feed_class == feed_class)
            list.push_back({{"at_mm", length_mm(job::cutter_of(feed))},
                            {"above_mm", length_mm(feed.above)},
                            {"upto_mm", length_mm(feed.upto)},
                            {"feed_mm", range_mm(length::Range{feed.least, feed.most})},
                            {"source", text_json(feed.origin.source)},
                            {"confidence", text_json(feed.origin.confidence)}});
    return list;
}

Json restrictions_json(const trade::Material& material) {
    Json list = Json::array();
    for (const auto& restriction : material.restrictions)
        list.push_back({{"about", trade::matter_word(restriction.about)},
                        {"words", restriction.words},
                        {"source", text_json(restriction.origin.source)},
                        {"confidence", text_json(restriction.origin.confidence)}});
    return list;
}

Json speed_json(const trade::Material& material) {
    if (material.refused())
        return nullptr;
    return Json::array({metres(material.speed_low), metres(material.speed_high)});
}

} // namespace

Json material_json(const trade::Material& material, const std::vector<trade::Feed>& feeds) {
    const bool cut = !material.refused();
    return {{"name", material.name},
            {"asked_as", text_json(material.asked_as)},
            {"condition", text_json(material.condition)},
            {"cut_here", cut},
            {"dwell", cut && material.may_dwell()},
            {"restrictions", restrictions_json(material)},
            {"drill_speed_m_per_min", cut ? Json(metres(material.drill_speed)) : Json()},
            {"counterbore_speed_m_per_min", speed_json(material)},
            {"feed_class", text_json(material.feed_class)},
            {"feeds", feeds_json(material.feed_class, feeds)},
            {"coolant", text_json(material.coolant)},
            {"pressure_limit_mpa",
             cut ? Json::array({material.pressure_low_mpa, material.pressure_high_mpa}) : Json()},
            {"pressure_basis", text_json(material.pressure_basis)},
            {"source", text_json(material.origin.source)},
            {"confidence", text_json(material.origin.confidence)},
            {"note", text_json(material.origin.note)}};
}

Json everyday_json(const std::vector<trade::EverydayMaterial>& everyday) {
    Json list = Json::array();
    for (const auto& usual : everyday)
        list.push_back({{"word", usual.word}, {"material", usual.material}, {"own", usual.own}});
    return list;
}

} // namespace present
