// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The few shapes that every JSON output shares.
#include "present/json.hpp"

#include "length/print.hpp"

namespace present {

Json length_mm(length::Length value) {
    return length::as_mm(value);
}

Json length_mm(const std::optional<length::Length>& value) {
    return value ? length_mm(*value) : Json(nullptr);
}

Json range_mm(const length::MaybeRange& range) {
    if (!range)
        return nullptr;
    return Json::array({length_mm(range->lo), length_mm(range->hi)});
}

Json dimension_json(const trade::MaybeDimension& dimension) {
    if (!dimension)
        return nullptr;
    return Json{{"text", dimension->text},
                {"how", trade::to_text(dimension->how)},
                {"range_mm", range_mm(dimension->range)}};
}

Json text_json(const std::string& text) {
    return text.empty() ? Json(nullptr) : Json(text);
}

std::string json_text(const Json& json) {
    // Bytes that are not UTF-8 cannot get into a catalogue; if they did, they must not stop us.
    return json.dump(2, ' ', true, Json::error_handler_t::replace) + '\n';
}

} // namespace present
