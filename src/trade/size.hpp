// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Screw sizes: number sizes, inches, metric and BA.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "length/length.hpp"

namespace trade {

enum class SizeSystem { number, inch, metric, ba };

struct ScrewSize {
    SizeSystem system = SizeSystem::inch;
    std::string text; // canonical, the key of the tables: `#10`, `5/16`, `1-1/4`, `M8`, `2BA`
    length::Length diameter; // basic major diameter (number sizes: .060 + .013 n, ASME B1.1)

    bool operator==(const ScrewSize&) const = default;
};

// Reads `#10`, `5/16`, `5/16 in`, `.3125`, `1 1/4`, `M8`, `8 mm`, `2BA`, a bare 0 to 12 as a number
// size. A pitch is not part of it. Throws error::BadData.
[[nodiscard]] ScrewSize parse_size(std::string_view text);

// A size with its pitch, as it stands in a SCREW text.
struct Thread {
    ScrewSize size;
    std::string pitch; // threads per inch or millimetres, plain: `18`, `1.25`; empty: not said
    // Written as a bare whole number: a number size, or so many inches.
    std::optional<std::int64_t> bare;
    bool pitch_after_x = false; // `M8x1`, `M6x20`: a pitch, or else the screw's length
    std::string length = {};    // of the screw, as written: `3/4`; nothing goes by it

    bool operator==(const Thread&) const = default;
};

// Reads `5/16-18`, `1-1/4-7`, `1 1/4`, `.375-16`, `10-24`, `#10-32`, `M8x1.25`, `m8 x 1.25`, `2BA`,
// `1-8`, with the screw's length too: `1/4-20 x 3/4`, `M8x1.25x30`. A bare whole number is a number
// size if it is 0 to 12 and its pitch is 24 or more, inches if the pitch is less; without a pitch
// it is taken as a number size for now. Decimals of an inch are taken to the nearest 64th that they
// round to three places. Throws error::BadData.
[[nodiscard]] Thread parse_thread(std::string_view text);

// So many whole inches: what a bare whole number means where it is no number size. None over 6 in.
[[nodiscard]] std::optional<ScrewSize> inch_size(std::int64_t whole_inches);

// A pitch in its plain spelling: `1.250` -> `1.25`, `.5` -> `0.5`. Empty if it is no number.
[[nodiscard]] std::string canonical_pitch(std::string_view text);

// Reads a set screw's size as it is recorded on a body, with or without pitch (`#8-32`, `M5`,
// `M5x0.8`), to its basic major diameter. Throws error::BadData.
[[nodiscard]] length::Length parse_set_screw(std::string_view text);

} // namespace trade
