// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Pieces of every look: noses thin and thick, shanks short and long, bodies that are known well and
// hardly, all three kinds.
#pragma once

#include <random>

#include "make/spec.hpp"

namespace random_piece {

[[nodiscard]] int pick(std::mt19937_64& random, int below);

// With limits as the make-list sets them: whatever slips in the bores of its bodies and runs in the
// holes it serves, less a micrometer's reading.
[[nodiscard]] make::Piece make(std::mt19937_64& random);

[[nodiscard]] make::Spec specify(const make::Piece& piece, length::Unit unit);

} // namespace random_piece
