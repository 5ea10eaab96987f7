// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What of the rules' rarer parts an answer meets, in words, so that a comparison can show that it
// met them all.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "oracle/candidate.hpp"

namespace oracle {

inline constexpr std::array k_situations = {"unlike pair",
                                            "size on size",
                                            "reamed for a shoulder",
                                            "tap hole",
                                            "made for it by its sizes",
                                            "made for it by its marking",
                                            "cutter of a tool, pilot not",
                                            "thick, pilot of unrecorded length taken",
                                            "thick, pilot of unrecorded length asked for",
                                            "blind, pilot of unrecorded length asked for",
                                            "spotface without a reach",
                                            "depth by the counterbore's standard",
                                            "held otherwise, tried",
                                            "held by a set screw that is seen",
                                            "teeth by the drill alone"};

[[nodiscard]] std::vector<std::string> met_by(const Context& context, const Candidate& candidate);

} // namespace oracle
