// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Small text helpers for names and words: ASCII only, independent of the locale.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace trade {

// Lower case, with runs of blanks as one space and none at the ends: for comparing names.
[[nodiscard]] std::string folded(std::string_view text);

[[nodiscard]] std::string_view trimmed(std::string_view text);

// The parts between separators, trimmed; empty parts are dropped.
[[nodiscard]] std::vector<std::string> split(std::string_view text, char separator);

} // namespace trade
