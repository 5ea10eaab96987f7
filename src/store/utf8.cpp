// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/utf8.hpp"

#include <cstddef>

namespace store {

namespace {

struct Lead {
    std::size_t length;     // of the sequence; 0: no sequence starts so
    unsigned char least;    // second byte
    unsigned char greatest; // second byte
};

// RFC 3629, section 4.
Lead lead_of(unsigned char byte) {
    if (byte >= 0xC2 && byte <= 0xDF)
        return {2, 0x80, 0xBF};
    if (byte == 0xE0)
        return {3, 0xA0, 0xBF};
    if (byte == 0xED)
        return {3, 0x80, 0x9F};
    if (byte >= 0xE1 && byte <= 0xEF)
        return {3, 0x80, 0xBF};
    if (byte == 0xF0)
        return {4, 0x90, 0xBF};
    if (byte >= 0xF1 && byte <= 0xF3)
        return {4, 0x80, 0xBF};
    if (byte == 0xF4)
        return {4, 0x80, 0x8F};
    return {0, 0, 0};
}

} // namespace

bool is_utf8_without_zero(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if (byte == 0)
            return false;
        if (byte < 0x80) {
            ++i;
            continue;
        }
        const Lead lead = lead_of(byte);
        if (lead.length == 0 || text.size() - i < lead.length)
            return false;
        for (std::size_t k = 1; k < lead.length; ++k) {
            const auto next = static_cast<unsigned char>(text[i + k]);
            if (next < (k == 1 ? lead.least : 0x80) || next > (k == 1 ? lead.greatest : 0xBF))
                return false;
        }
        i += lead.length;
    }
    return true;
}

} // namespace store
