// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A rack's facts in memory, in the order of their sizes, for many questions: each index of the file
// is read once. Whole records are still asked of the rack.
#pragma once

#include <memory>

#include "match/by_size.hpp"
#include "match/tools.hpp"
#include "trade/rack.hpp"

namespace match {

class Shelf : public trade::RackView {
  public:
    // `rack` must outlive this. What asks for more than `detail` is passed on to it.
    Shelf(const trade::Rack& rack, trade::Detail detail);
    // Only the tools of one set.
    Shelf(const trade::Rack& rack, const std::string& set);

    void by_cutter(trade::PilotKind kind, const trade::Window& window, trade::Detail detail,
                   const trade::SeeBody& see) const override;
    void by_pilot(const trade::Window& window, trade::Detail detail,
                  const trade::SeeBody& see) const override;
    void pilots_in(const trade::Window& window, trade::Detail detail,
                   const trade::SeePilot& see) const override;

  private:
    static constexpr std::size_t k_kinds = 4;
    struct Bodies {
        std::vector<trade::BodyFacts> facts;
        BySize by_cutter;
    };
    void put_in_order();

    [[nodiscard]] bool holds(trade::Detail detail) const {
        return detail == trade::Detail::usual || detail_ == trade::Detail::all;
    }

    trade::Detail detail_;
    std::array<Bodies, k_kinds> bodies_; // by kind of pilot
    BySize integral_by_pilot_;
    std::vector<trade::PilotFacts> pilots_;
    BySize pilots_by_size_;
};

// Below so many questions each reads what it needs from the rack.
inline constexpr std::size_t k_many_questions = 30;

// The rack itself for a few questions, a shelf made of it for many.
class RackFor {
  public:
    // `rack` must outlive this.
    RackFor(const trade::Rack& rack, std::size_t questions);
    [[nodiscard]] const trade::Rack& rack() const { return shelf_ ? *shelf_ : rack_; }

  private:
    const trade::Rack& rack_;
    std::unique_ptr<Shelf> shelf_;
};

} // namespace match
