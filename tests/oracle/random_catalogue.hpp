// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Random questions and catalogues, aimed at the edges of the rules: cutters near the sizes that a
// head asks for, pilots near its holes, pilot shanks near bores, and much that nobody recorded.
// The same seed always gives the same case.
#pragma once

#include <cstdint>
#include <vector>

#include "match/question.hpp"
#include "oracle/dice.hpp"
#include "trade/rack.hpp"

namespace oracle {

struct Tools {
    std::vector<trade::Body> bodies; // by number
    std::vector<trade::Pilot> pilots;
    std::vector<trade::Trial> trials;
};

struct RandomCase {
    length::Unit unit = length::Unit::inch;
    match::Question question;
    match::Shop shop;
    Tools tools;
};

[[nodiscard]] RandomCase random_case(std::uint64_t seed);

// The parts of it, in the order in which they are made.
[[nodiscard]] trade::Practice random_practice(Dice& dice);
[[nodiscard]] trade::Screw random_screw(Dice& dice, const std::vector<trade::Drill>& all_drills);
[[nodiscard]] std::vector<trade::Drill> every_drill();
[[nodiscard]] std::vector<trade::Drill> random_drills(Dice& dice, const trade::Screw& screw,
                                                      const std::vector<trade::Drill>& all_drills);
[[nodiscard]] match::Question random_question(Dice& dice, const trade::Screw& screw,
                                              const match::Shop& shop,
                                              const std::vector<trade::Drill>& all_drills);
[[nodiscard]] Tools random_tools(Dice& dice, const match::Question& question,
                                 const match::Shop& shop);

// Shop practice as the rules state it, and the oversize table of 2800 test holes (Machinery's
// Handbook, from memory).
[[nodiscard]] trade::Practice usual_practice();
[[nodiscard]] std::vector<trade::Oversize> usual_oversize();
[[nodiscard]] std::vector<trade::DrilledHole> usual_drilled_holes();

// Some method of measuring, with its limits about `nominal`.
[[nodiscard]] trade::Dimension measured(Dice& dice, length::Length nominal);

// Absent in so many cases of a hundred.
[[nodiscard]] trade::MaybeDimension perhaps_unknown(Dice& dice, std::int64_t percent,
                                                    length::Length nominal);

// A rack that holds what it is given.
class ToolRack : public trade::Rack {
  public:
    explicit ToolRack(const Tools& tools) : tools_(tools) {}

    [[nodiscard]] std::vector<trade::Body> bodies() const override { return tools_.bodies; }
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override { return tools_.pilots; }
    [[nodiscard]] std::vector<trade::Trial> trials() const override { return tools_.trials; }

  private:
    const Tools& tools_;
};

} // namespace oracle
