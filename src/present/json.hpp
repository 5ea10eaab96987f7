// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// JSON for other programs: keys in a fixed order, lengths in millimetres under keys ending in _mm,
// nothing but ASCII, so that it is safe on a terminal too.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "length/range.hpp"
#include "trade/dimension.hpp"

namespace present {

using Json = nlohmann::ordered_json;

// [lo, hi], or null.
[[nodiscard]] Json range_mm(const length::MaybeRange& range);
[[nodiscard]] Json length_mm(length::Length value);
[[nodiscard]] Json length_mm(const std::optional<length::Length>& value); // or null

// {"text": as written, "how": .., "range_mm": [lo, hi]}, or null.
[[nodiscard]] Json dimension_json(const trade::MaybeDimension& dimension);

// Null for empty text: not known.
[[nodiscard]] Json text_json(const std::string& text);

// Indented by two, with a line end.
[[nodiscard]] std::string json_text(const Json& json);

} // namespace present
