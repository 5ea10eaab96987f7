// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Numbers of tools, asked about far more often than they are met: a bit for each, by its last
// digits in binary, answers for most that are not among them.
#pragma once

#include <algorithm>
#include <bit>
#include <cstdint>
#include <vector>

namespace trade {

class NumberSet {
  public:
    NumberSet() = default;
    explicit NumberSet(std::vector<std::int64_t> numbers) : numbers_(std::move(numbers)) {
        std::sort(numbers_.begin(), numbers_.end());
        bits_.resize(std::bit_ceil(16 * numbers_.size() + 1));
        for (const auto number : numbers_)
            bits_[place_of(number)] = true;
    }

    // False: it is not among them.
    [[nodiscard]] bool may_have(std::int64_t number) const {
        return !bits_.empty() && bits_[place_of(number)];
    }
    [[nodiscard]] bool has(std::int64_t number) const {
        return may_have(number) && std::binary_search(numbers_.begin(), numbers_.end(), number);
    }

  private:
    [[nodiscard]] std::size_t place_of(std::int64_t number) const {
        return static_cast<std::size_t>(number) & (bits_.size() - 1);
    }

    std::vector<std::int64_t> numbers_; // ascending
    std::vector<bool> bits_;            // a power of two of them
};

} // namespace trade
