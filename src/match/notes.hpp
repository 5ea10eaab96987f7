// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the user should know of an answer besides the rules.
#pragma once

#include <string>
#include <vector>

#include "match/triple.hpp"

namespace match {

// Play of the screw in its hole and the cutter that clears it, an edge to be broken for the head's
// fillet, a pilot to be fetched from another body.
[[nodiscard]] std::vector<std::string> notes_of(const Job& job, const Triple& triple,
                                                length::Unit unit);

} // namespace match
