// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Words that the pages on identifying share.
#pragma once

#include <string>
#include <vector>

#include "match/identify_tool.hpp"

namespace present {

// `a, b and c`, or with another last word.
[[nodiscard]] std::string listed(const std::vector<std::string>& names, const char* last);

// `3/8`; more than six: `9 sizes, #10 to 3/8`.
[[nodiscard]] std::string sizes_text(const match::ToolIdentity& identity);

// `socket head cap (ASME B18.3 1960, BS 2470) or fillister (ISO 1207)`.
[[nodiscard]] std::string heads_text(const match::ToolIdentity& identity);

// `socket head cap (4 series) or fillister`.
[[nodiscard]] std::string forms_text(const match::ToolIdentity& identity);

// `close hole, drill 25/64`, `drill 9.9 mm`; empty where the pilot is not known.
[[nodiscard]] std::string hole_text(const match::ToolUse& use);

} // namespace present
