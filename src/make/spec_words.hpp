// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a drawing says in words: material, heat treatment, the order of work, and what to beware of.
#pragma once

#include "make/spec.hpp"

namespace make {

[[nodiscard]] std::string finish_of(const Piece& piece);
[[nodiscard]] std::string material_of(const Piece& piece);
// Soft for a short run, else hardened and drawn, with .005 to .010 in left for grinding (common
// practice).
[[nodiscard]] std::string treatment_of(const Piece& piece, length::Unit unit);

// The order of work; `spec` has its dimensions already.
[[nodiscard]] std::vector<std::string> steps_of(const Piece& piece, const Spec& spec,
                                                length::Unit unit);

// What is weak, tight or unusual about this piece, then the cautions for the lathe.
[[nodiscard]] std::vector<std::string> cautions_of(const Piece& piece, const Spec& spec,
                                                   length::Unit unit);

// Least cutting edge from nose to rim: .030 in, 1/16 on cutters over 1/2 in (common practice).
[[nodiscard]] length::Length least_edge(length::Length cut_dia);

// A nose thinner than 60 % of its shank is weak in bending (common practice).
[[nodiscard]] bool weak_neck(const Piece& piece);

} // namespace make
