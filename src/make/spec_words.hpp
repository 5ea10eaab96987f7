// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a drawing says in words: material, heat treatment, the order of work, and what to beware of.
#pragma once

#include "make/spec.hpp"

namespace make {

[[nodiscard]] std::string finish_of(const Piece& piece, length::Unit unit);
[[nodiscard]] std::string material_of(const Piece& piece, const Treatment& treatment);
// Of a new pilot as asked for; a sleeve or a turned-down pilot stays soft.
[[nodiscard]] std::string treatment_of(const Piece& piece, const Treatment& treatment,
                                       length::Unit unit);
[[nodiscard]] std::string treatment_source(const Piece& piece, const Treatment& treatment);

// Hardened and ground: asked for, and a new pilot.
[[nodiscard]] bool is_hardened(const Piece& piece, const Treatment& treatment);

// How a hardened pilot is held for grinding: centres by ISO 6411, or points on thin ends (common
// practice).
[[nodiscard]] std::string centres_of(const Piece& piece);

// Limits that a lathe does not hold: .001 in or 0.015 mm (common practice).
[[nodiscard]] bool closer_than_turned(const Piece& piece, length::Unit unit);

// The order of work; `spec` has its dimensions already.
[[nodiscard]] std::vector<std::string> steps_of(const Piece& piece, const Spec& spec,
                                                const Treatment& treatment, length::Unit unit);

// What is weak, tight or unusual about this piece, then the cautions for making it: those for heat
// and quench where it is hardened, for solder and retaining compound where it is a sleeve.
[[nodiscard]] std::vector<std::string> cautions_of(const Piece& piece, const Spec& spec,
                                                   const Treatment& treatment, length::Unit unit);

// Least cutting edge from nose to rim: .030 in, 1/16 on cutters over 1/2 in (common practice).
[[nodiscard]] length::Length least_edge(length::Length cut_dia);

// A nose thinner than 60 % of its shank is weak in bending (common practice).
[[nodiscard]] bool weak_neck(const Piece& piece);

} // namespace make
