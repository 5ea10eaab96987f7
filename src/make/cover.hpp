// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The least cover, exactly: the fewest choices that between them cover every element that can be
// covered. Knows nothing of pilots; make/choose.cpp turns screws and pilots into elements and
// choices.
#pragma once

#include <cstdint>
#include <vector>

namespace make {

// What one choice covers: elements, ascending, each with its rank there (0 is best; under 1000).
struct Choice {
    std::vector<int> elements;
    std::vector<int> ranks;
    int resource = -1; // of the choices that name the same resource (>= 0) one at most is taken
};

struct Cover {
    std::vector<int> chosen; // indexes of choices, ascending
    bool proven = false;     // no smaller cover exists, and none as small with a better total
    int bound = 0;           // no cover that covers as much has fewer choices than this
};

// Order of preference: most elements covered, then fewest choices, then the least total over the
// elements of the best rank among the chosen, then the lexicographically least list of indexes.
// Deterministic: the search stops after `most_nodes` nodes rather than by the clock, and then
// returns the best found so far with the bound that is proven. A large node counts for several,
// one for every thousand entries looked at, so that a million nodes take a second or two at any
// size. `proven` says nothing of the last preference, for which the least list found is taken.
[[nodiscard]] Cover least_cover(int elements, const std::vector<Choice>& choices,
                                std::int64_t most_nodes);

} // namespace make
