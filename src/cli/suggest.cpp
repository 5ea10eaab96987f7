// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Edit distance with swaps of neighbours, on short words.
#include "cli/suggest.hpp"

#include <algorithm>

namespace cli {

std::size_t edits(std::string_view a, std::string_view b) {
    std::vector<std::vector<std::size_t>> cost(a.size() + 1,
                                               std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) {
        for (std::size_t j = 0; j <= b.size(); ++j) {
            if (i == 0 || j == 0) {
                cost[i][j] = i + j;
                continue;
            }
            const std::size_t change = a[i - 1] == b[j - 1] ? 0 : 1;
            cost[i][j] =
                std::min({cost[i - 1][j] + 1, cost[i][j - 1] + 1, cost[i - 1][j - 1] + change});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                cost[i][j] = std::min(cost[i][j], cost[i - 2][j - 2] + 1);
        }
    }
    return cost[a.size()][b.size()];
}

std::string nearest(std::string_view word, const std::vector<std::string>& known) {
    constexpr std::size_t k_longest = 40; // nobody mistypes a longer word
    if (word.empty() || word.size() > k_longest)
        return {};
    std::size_t best = std::max<std::size_t>(1, word.size() / 3) + 1;
    std::string found;
    for (const std::string& candidate : known) {
        const std::size_t distance = edits(word, candidate);
        if (distance < best) {
            best = distance;
            found = candidate;
        }
    }
    return found;
}

std::string did_you_mean(std::string_view word, const std::vector<std::string>& known,
                         const std::string& otherwise) {
    const std::string meant = nearest(word, known);
    return meant.empty() ? otherwise : "did you mean '" + meant + "'?";
}

} // namespace cli
