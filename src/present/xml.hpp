// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Text inside XML, whatever was stored.
#pragma once

#include <string>
#include <string_view>

namespace present {

// For content and for attributes in double quotes: made safe as for a terminal, markup escaped,
// characters that XML 1.0 does not allow as `?`.
[[nodiscard]] std::string xml_text(std::string_view text);

} // namespace present
