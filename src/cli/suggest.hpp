// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// 'Did you mean': the known word that is nearest to one that is not known.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace cli {

// Letters put in, left out, changed or swapped with their neighbour, from one word to the other.
[[nodiscard]] std::size_t edits(std::string_view a, std::string_view b);

// Empty when none is near enough to be meant. Of equally near words, the first.
[[nodiscard]] std::string nearest(std::string_view word, const std::vector<std::string>& known);

// `did you mean 'list'?`, or `otherwise` when nothing is near.
[[nodiscard]] std::string did_you_mean(std::string_view word, const std::vector<std::string>& known,
                                       const std::string& otherwise);

} // namespace cli
