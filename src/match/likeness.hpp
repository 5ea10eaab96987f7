// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// How a tool's figures stand to the tools that standards and handbooks list.
#pragma once

#include <string>
#include <vector>

#include "match/answer.hpp"

namespace match {

// What was measured of a tool. Without cutter and bore it is a loose pilot, and the shank is the
// part that goes in a bore; else the shank is the body's.
struct ToolFigures {
    trade::BodyKind kind = trade::BodyKind::counterbore;
    length::MaybeRange cut_dia;
    length::MaybeRange pilot_dia;
    length::MaybeRange bore;
    length::MaybeRange shank_dia;

    [[nodiscard]] bool loose_pilot() const { return !cut_dia && !bore; }
};

// A listed tool that no figure speaks against.
struct Likeness {
    std::string name;               // `Machinery's Handbook integral pilot`, `DIN 373 (1975)`
    std::string size;               // of the screw; empty: none is named
    std::string hole;               // as listed; empty: not named
    length::MaybeRange cut_dia;     // as listed
    length::MaybeRange pilot_dia;   // as listed
    Verdict result = Verdict::pass; // unknown: a figure overlaps, but not all of it
    std::vector<Reason> figures;    // those that both give: listed, and measured
    trade::Origin origin;
};

// Listed tools like these figures, and listed pilots where the pilot is loose or sits in a bore:
// surely alike first, then by how many figures agree, single sizes before bands, table order. A
// listed size is taken with its printed limits and those that practice gives a mark, so that worn
// tools are found too. A tool must agree in its cutter, or in its bore if the cutter is not given;
// a pilot in its pilot diameter.
[[nodiscard]] std::vector<Likeness> likenesses(const ToolFigures& figures,
                                               const trade::Tables& tables,
                                               const trade::Practice& practice, length::Unit unit);

} // namespace match
