// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Chance that comes out the same on every machine: the standard fixes the engine but not its
// distributions, so these are our own.
#pragma once

#include <cstdint>
#include <random>
#include <vector>

#include "length/length.hpp"

namespace oracle {

class Dice {
  public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}

    // 0 to n - 1; the slight favour of low values does not matter here.
    std::int64_t below(std::int64_t n) {
        return static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(n));
    }
    std::int64_t between(std::int64_t lo, std::int64_t hi) { return lo + below(hi - lo + 1); }
    bool chance(std::int64_t percent) { return below(100) < percent; }

    template <typename T>
    const T& pick(const std::vector<T>& from) {
        return from[static_cast<std::size_t>(below(static_cast<std::int64_t>(from.size())))];
    }
    // One of the values, by their weights.
    template <typename T>
    struct Weighted {
        std::int64_t weight;
        T value;
    };
    template <typename T>
    T weighted(const std::vector<Weighted<T>>& from) {
        std::int64_t total = 0;
        for (const auto& one : from) {
            total += one.weight;
        }
        std::int64_t at = below(total);
        for (const auto& one : from) {
            if (at < one.weight) {
                return one.value;
            }
            at -= one.weight;
        }
        return from.back().value;
    }
    // A length from `lo` to `hi` thousandths of another.
    length::Length part_of(length::Length whole, std::int64_t lo, std::int64_t hi) {
        return whole * between(lo, hi) / 1000;
    }

  private:
    std::mt19937_64 engine_;
};

} // namespace oracle
