// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// How many random cases a property is tried on. Sanitizers, which slow a case tenfold, find what
// any case shows: there COUNTERPART_FEWER=8 tries an eighth of them.
#pragma once

#include <algorithm>
#include <cstdlib>

namespace cases {

template <class Count>
Count some(Count all) {
    const char* text = std::getenv("COUNTERPART_FEWER");
    const long fewer = text == nullptr ? 1 : std::strtol(text, nullptr, 10);
    return std::max<Count>(1, all / static_cast<Count>(std::max(fewer, 1L)));
}

} // namespace cases
