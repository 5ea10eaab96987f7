// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/screw_json.hpp"

namespace present {

namespace {

Json origin_json(const trade::Origin& origin) {
    return {{"source", text_json(origin.source)}, {"confidence", text_json(origin.confidence)}};
}

Json head_json(const trade::Head& head) {
    return {{"series", head.series},
            {"pitches", head.pitches},
            {"head_mm", range_mm(head.head_dia)},
            {"head_min_derived", text_json(head.head_min_note)},
            {"head_height_mm", length_mm(head.head_height_max)},
            {"drive", head.drive},
            {"drive_size", text_json(head.drive_size)},
            {"origin", origin_json(head.origin)}};
}

Json hole_json(const std::optional<trade::Clearance::Hole>& hole) {
    if (!hole)
        return nullptr;
    return {{"name", hole->drill}, {"diameter_mm", length_mm(hole->diameter)}};
}

Json tap_json(const std::optional<trade::TapDrill>& tap) {
    if (!tap)
        return nullptr;
    return {{"pitch", tap->pitch},
            {"name", tap->drill},
            {"diameter_mm", length_mm(tap->diameter)},
            {"origin", origin_json(tap->origin)}};
}

Json counterbore_json(const trade::Counterbore& row) {
    return {{"rule", row.rule},
            {"kind", row.kind},
            {"diameter_mm", length_mm(row.diameter)},
            {"name", text_json(row.name)},
            {"depth_addition_mm", length_mm(row.depth_addition)},
            {"origin", origin_json(row.origin)}};
}

template <class Rows, class Convert>
Json list_of(const Rows& rows, Convert convert) {
    Json list = Json::array();
    for (const auto& row : rows)
        list.push_back(convert(row));
    return list;
}

} // namespace

Json screw_json(const trade::Screw& screw) {
    return {{"name", screw.name},
            {"form", text_json(screw.form)},
            {"form_said", screw.form_said},
            {"series", text_json(screw.series)},
            {"series_said", screw.series_said},
            {"size", screw.size ? Json(screw.size->text) : Json(nullptr)},
            {"pitch", text_json(screw.pitch)},
            {"thread", text_json(screw.thread)},
            {"taken", screw.taken},
            {"screw_mm", range_mm(screw.screw_dia)},
            {"head_mm", range_mm(screw.head_dia)},
            {"head_measured", screw.head_measured},
            {"head_height_mm", range_mm(screw.head_height)},
            {"drive", text_json(screw.drive)},
            {"drive_size", text_json(screw.drive_size)},
            {"fillet_mm", length_mm(screw.fillet_dia)},
            {"close", hole_json(screw.close)},
            {"normal", hole_json(screw.normal)},
            {"loose", hole_json(screw.loose)},
            {"tap", tap_json(screw.tap)},
            {"heads", list_of(screw.heads, head_json)},
            {"counterbores", list_of(screw.counterbores, counterbore_json)},
            {"origin", origin_json(screw.origin)}};
}

} // namespace present
