// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Words for the make-list that tables, JSON and drawings share.
#pragma once

#include <string>
#include <string_view>

#include "make/piece.hpp"

namespace present {

// `pilot`, `sleeve`, `turn-down`.
[[nodiscard]] std::string_view kind_word(make::PieceKind kind);

// `12, 15 and 31`.
[[nodiscard]] std::string body_numbers(const make::Piece& piece);

// Every screw it serves, once, with the drills: `5/16-18 socket head cap (21/64)`.
[[nodiscard]] std::string screws_served(const make::Piece& piece);

} // namespace present
