// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Screw sizes: number sizes, inches, metric and BA.
#pragma once

#include <string>
#include <string_view>

#include "length/length.hpp"

namespace trade {

enum class SizeSystem { number, inch, metric, ba };

struct ScrewSize {
    SizeSystem system = SizeSystem::inch;
    std::string text;         // canonical, the key of the tables: `#10`, `5/16`, `1-1/4`, `M8`, `2BA`
    length::Length diameter;  // basic major diameter (number sizes: .060 + .013 n, ASME B1.1)

    bool operator==(const ScrewSize&) const = default;
};

// Reads `#10`, `5/16`, `5/16 in`, `1 1/4`, `M8`, `2BA`, a bare 0 to 12 as a number size.
// A pitch is not part of it. Throws error::BadData.
[[nodiscard]] ScrewSize parse_size(std::string_view text);

// Reads a set screw's size as it is recorded on a body, with or without pitch (`#8-32`, `M5`,
// `M5x0.8`), to its basic major diameter. Throws error::BadData.
[[nodiscard]] length::Length parse_set_screw(std::string_view text);

} // namespace trade
