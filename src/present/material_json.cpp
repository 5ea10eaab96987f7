// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/material_json.hpp"

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
            list.push_back({{"above_mm", length_mm(feed.above)},
                            {"upto_mm", length_mm(feed.upto)},
                            {"feed_mm", range_mm(length::Range{feed.least, feed.most})},
                            {"source", text_json(feed.origin.source)},
                            {"confidence", text_json(feed.origin.confidence)}});
    return list;
}

} // namespace

Json material_json(const trade::Material& material, const std::vector<trade::Feed>& feeds) {
    return {{"name", material.name},
            {"condition", text_json(material.condition)},
            {"drill_speed_m_per_min", metres(material.drill_speed)},
            {"counterbore_speed_m_per_min",
             Json::array({metres(material.speed_low), metres(material.speed_high)})},
            {"feed_class", material.feed_class},
            {"feeds", feeds_json(material.feed_class, feeds)},
            {"coolant", material.coolant},
            {"pressure_limit_mpa", material.pressure_limit_mpa},
            {"pressure_basis", material.pressure_basis},
            {"source", text_json(material.origin.source)},
            {"confidence", text_json(material.origin.confidence)},
            {"note", text_json(material.origin.note)}};
}

} // namespace present
