// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/json.hpp"

#include "length/print.hpp"

namespace present {

Json in_mm(length::Length value) { return length::as_mm(value); }

Json in_mm(const std::optional<length::Length>& value) {
    return value ? in_mm(*value) : Json(nullptr);
}

Json in_mm(const length::Range& range) {
    return Json::array({length::as_mm(range.lo), length::as_mm(range.hi)});
}

Json in_mm(const length::MaybeRange& range) { return range ? in_mm(*range) : Json(nullptr); }

Json or_null(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

} // namespace present
