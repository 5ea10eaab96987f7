// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The few JSON shapes that every output shares: lengths are millimetres under keys ending `_mm`,
// ranges are [lo, hi], what is not known is null.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>

#include "length/range.hpp"

namespace present {

using Json = nlohmann::ordered_json;

[[nodiscard]] Json in_mm(length::Length value);
[[nodiscard]] Json in_mm(const std::optional<length::Length>& value);
[[nodiscard]] Json in_mm(const length::Range& range);
[[nodiscard]] Json in_mm(const length::MaybeRange& range);

// null for empty text.
[[nodiscard]] Json or_null(const std::string& text);

} // namespace present
