// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Tools near the head and the holes of one screw, good and bad, known and not; and questions about
// it. Comes out the same on every machine.
#pragma once

#include <random>
#include <vector>

#include "match/question.hpp"
#include "trade/rack.hpp"

namespace published {

class Dice {
  public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    std::int64_t between(std::int64_t lo, std::int64_t hi) {
        return lo + static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(hi - lo + 1));
    }
    bool one_in(std::int64_t n) { return between(1, n) == 1; }
    length::Length within(const length::Range& range) {
        return length::Length::from_nm(between(range.lo.nm(), range.hi.nm()));
    }
    template <typename List>
    const auto& of(const List& list) {
        return list[static_cast<std::size_t>(
            between(0, static_cast<std::int64_t>(list.size()) - 1))];
    }

  private:
    std::mt19937_64 engine_;
};

class RandomRack : public trade::Rack {
  public:
    RandomRack(const trade::Screw& screw, Dice& dice);
    [[nodiscard]] std::vector<trade::Body> bodies() const override { return bodies_; }
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override { return pilots_; }
    [[nodiscard]] std::vector<trade::Trial> trials() const override { return trials_; }

  private:
    void add(std::int64_t number);
    void add_removable(trade::Body& body, length::Length hole);
    template <typename Tool>
    void wear(Tool& tool);
    trade::MaybeDimension around(length::Length middle, std::int64_t off_nm);

    const trade::Screw& screw_;
    Dice& dice_;
    std::vector<trade::Body> bodies_;
    std::vector<trade::Pilot> pilots_;
    std::vector<trade::Trial> trials_;
};

// The screw by itself, on a washer, or in a part that is thin or has a blind hole.
[[nodiscard]] match::Question random_question(const trade::Screw& screw, Dice& dice);

} // namespace published
