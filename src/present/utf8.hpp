// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Reading UTF-8 one character at a time, strictly: no overlong forms, no surrogates.
#pragma once

#include <cstdint>
#include <string_view>

namespace present {

struct Character {
    char32_t code = 0;
    std::size_t bytes = 0; // 0: the byte here begins no character
};

// The character at the start of `text`, which is not empty.
[[nodiscard]] Character first_character(std::string_view text);

// Where the first byte is that is not UTF-8; npos if there is none.
[[nodiscard]] std::size_t find_invalid(std::string_view text);

} // namespace present
