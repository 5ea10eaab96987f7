// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The table of well-formed byte sequences of the Unicode standard, as arithmetic.
#include "present/utf8.hpp"

namespace present {

namespace {

std::size_t length_from_lead(unsigned char lead) {
    if (lead < 0x80)
        return 1;
    if (lead >= 0xC2 && lead <= 0xDF)
        return 2;
    if (lead >= 0xE0 && lead <= 0xEF)
        return 3;
    if (lead >= 0xF0 && lead <= 0xF4)
        return 4;
    return 0;
}

bool allowed(char32_t code, std::size_t bytes) {
    constexpr char32_t k_least[] = {0, 0, 0x80, 0x800, 0x10000};
    const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
    return code >= k_least[bytes] && code <= 0x10FFFF && !surrogate;
}

} // namespace

Character first_character(std::string_view text) {
    const auto lead = static_cast<unsigned char>(text.front());
    const std::size_t bytes = length_from_lead(lead);
    if (bytes == 0 || bytes > text.size())
        return {lead, 0};
    if (bytes == 1)
        return {lead, 1};
    char32_t code = lead & (0x7FU >> bytes);
    for (std::size_t i = 1; i < bytes; ++i) {
        const auto next = static_cast<unsigned char>(text[i]);
        if ((next & 0xC0U) != 0x80U)
            return {lead, 0};
        code = (code << 6U) | (next & 0x3FU);
    }
    return allowed(code, bytes) ? Character{code, bytes} : Character{lead, 0};
}

std::size_t find_invalid(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const Character next = first_character(text.substr(at));
        if (next.bytes == 0)
            return at;
        at += next.bytes;
    }
    return std::string_view::npos;
}

} // namespace present
