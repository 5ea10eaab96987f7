// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the user should know of an answer besides the rules.
#pragma once

#include <string>
#include <vector>

#include "match/triple.hpp"

namespace match {

// Only what bites: how far the screw can sit off, no play, a better drill, a pilot to be fetched
// from another body.
[[nodiscard]] std::vector<std::string> notes_of(const Job& job, const Triple& triple,
                                                length::Unit unit);

// Of the floor of the counterbore, which an operation sheet gives in figures: an edge to be broken
// for the head's fillet, little left under the head.
[[nodiscard]] std::vector<std::string> floor_notes_of(const Job& job, const Triple& triple,
                                                      length::Unit unit);

// What is taken for a size that nobody recorded.
[[nodiscard]] std::vector<std::string> assumed_of(const Job& job, const Triple& triple);

} // namespace match
