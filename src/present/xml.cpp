// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/xml.hpp"

#include "present/text.hpp"
#include "present/utf8.hpp"

namespace present {

std::string xml_text(std::string_view text) {
    const auto plain = safe(text); // UTF-8 without controls
    std::string_view rest = plain;
    std::string escaped;
    while (!rest.empty()) {
        const auto [code, bytes] = first_character(rest);
        const auto character = rest.substr(0, bytes);
        rest.remove_prefix(bytes);
        switch (code) {
        case '&':
            escaped += "&amp;";
            break;
        case '<':
            escaped += "&lt;";
            break;
        case '>':
            escaped += "&gt;";
            break;
        case '"':
            escaped += "&quot;";
            break;
        default:
            if ((code & 0xFFFEU) == 0xFFFEU)
                escaped += '?';
            else
                escaped += character;
        }
    }
    return escaped;
}

} // namespace present
