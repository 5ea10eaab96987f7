// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Tools as a very large toolroom would have them, one at a time. Cutters are the tool and published
// sizes of the listed screws, pilots run in their clearance holes, shanks slip in the usual bores,
// and every size is a reading on the grid of its instrument. The same seed gives the same tools.
#pragma once

#include <array>
#include <vector>

#include "oracle/dice.hpp"
#include "trade/body.hpp"
#include "trade/pilot.hpp"
#include "trade/tables.hpp"

namespace speed {

// Nominal sizes that most tools share, as in a shop; or, as nowhere, hardly two tools of a size.
enum class Form { clustered, spread };

// What one listed screw asks for.
struct Wish {
    length::Unit unit;
    length::Length tool, published; // cutting diameters
    std::vector<length::Length> holes;
    int weight; // how common the screw is
};

class LargeShop {
  public:
    LargeShop(const trade::Tables& tables, trade::Practice practice, Form form, std::uint64_t seed);

    [[nodiscard]] trade::Body body(std::int64_t number);
    // Not in a body; `bore` is the index of the bore it was made for.
    [[nodiscard]] trade::Pilot pilot(std::int64_t number, std::size_t& bore);

    // The usual bores, nominal, and which of them this body has; none for an integral pilot.
    static const std::vector<length::Length>& bores();
    [[nodiscard]] static std::optional<std::size_t> bore_of(const trade::Body& body);

    [[nodiscard]] oracle::Dice& dice() { return dice_; }
    [[nodiscard]] trade::Tried tried();

  private:
    [[nodiscard]] const Wish& wish();
    // A reading of what is really `size`; about 5 % were never taken.
    [[nodiscard]] trade::MaybeDimension reading(length::Length size, trade::Feature feature,
                                                length::Unit unit, trade::How how);
    [[nodiscard]] trade::Dimension nominal(length::Length size, trade::Feature feature,
                                           length::Unit unit);
    [[nodiscard]] trade::How how_measured(trade::Feature feature);
    [[nodiscard]] length::Length actual(length::Length nominal, std::int64_t lo_e5,
                                        std::int64_t hi_e5);
    [[nodiscard]] std::optional<trade::Condition> condition();
    void add_own_pilot(trade::Body& body, const Wish& wish);
    void add_bore(trade::Body& body, const Wish& wish);
    void add_flat(trade::Pilot& pilot);

    oracle::Dice dice_;
    trade::Practice practice_;
    Form form_;
    std::vector<Wish> wishes_;
    std::vector<std::size_t> by_weight_; // an index of `wishes_` as often as its weight
};

} // namespace speed
