// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Bodies and pilots with every field drawn at random, and texts of any Unicode.
#pragma once

#include <cstdint>
#include <random>
#include <string>

#include "trade/body.hpp"
#include "trade/pilot.hpp"
#include "trade/screw.hpp"

class RandomTools {
  public:
    explicit RandomTools(std::uint32_t seed) : engine_(seed) {}

    // From lo to hi, both of them too.
    [[nodiscard]] std::int64_t between(std::int64_t lo, std::int64_t hi);
    [[nodiscard]] bool chance(int percent) { return between(1, 100) <= percent; }

    // Quotes, line breaks, control characters and any code point but U+0000 and surrogates.
    [[nodiscard]] std::string text();
    [[nodiscard]] trade::MaybeDimension dimension();
    [[nodiscard]] trade::Body body();   // number, loan: none
    [[nodiscard]] trade::Pilot pilot(); // number, in_body, loan: none
    [[nodiscard]] trade::OwnScrew screw();

  private:
    template <class Word>
    [[nodiscard]] Word word(Word last) {
        return static_cast<Word>(between(0, static_cast<int>(last)));
    }
    template <class Value>
    [[nodiscard]] std::optional<Value> maybe(Value value) {
        return chance(70) ? std::optional<Value>(std::move(value)) : std::nullopt;
    }
    [[nodiscard]] std::vector<std::string> work();

    std::mt19937 engine_;
};
