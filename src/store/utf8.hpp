// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Whether text can be kept and given back byte for byte, in the tables and in the history's JSON.
#pragma once

#include <string_view>

namespace store {

// Well-formed UTF-8 (RFC 3629: shortest form, no surrogates, to U+10FFFF) without U+0000.
[[nodiscard]] bool is_utf8_without_zero(std::string_view text);

} // namespace store
