// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Lengths: any text is read or refused with an error of ours, and what is read is a plausible
// range.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "error/error.hpp"
#include "length/parse.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    for (const auto unit : {length::Unit::inch, length::Unit::millimetre})
        try {
            const auto reading = length::parse_reading(text, unit);
            static_cast<void>(reading);
            if (length::parse_length(text, unit).value.nm() <= 0)
                std::abort();
        } catch (const error::Error&) {
        }
    return 0;
}
