// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A piece with nothing unusual about it, for the tests of specifications.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "bench.hpp"
#include "make/piece.hpp"

namespace spec_bench {

// 3/16 bore .1875 to .1877 in a 1/2 cutter, .620 deep, #8 set screw .200 from its mouth; the pilot
// runs in a 21/64 drill's hole.
inline make::Piece plain_piece() {
    make::Piece piece;
    piece.item = 1;
    piece.pilot = bench::tenths(3250, 3260);
    piece.shank = bench::tenths(1863, 1868);
    piece.bodies = {bench::removable_body()};
    return piece;
}

inline bool says(const std::vector<std::string>& lines, std::string_view words) {
    return std::any_of(lines.begin(), lines.end(), [words](const std::string& line) {
        return line.find(words) != std::string::npos;
    });
}

} // namespace spec_bench
