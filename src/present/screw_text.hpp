// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A resolved screw for a person: in two or three lines above an answer, or in full with the source
// of every figure.
#pragma once

#include <string>

#include "present/style.hpp"
#include "trade/screw.hpp"

namespace present {

// Name, head, height and key; what else the size can have when the series was not named.
[[nodiscard]] std::string screw_summary(const trade::Screw& screw, length::Unit unit,
                                        std::size_t width);

// Heads by series side by side, holes, counterbores, tap drill, and where each is from.
[[nodiscard]] std::string screw_text(const trade::Screw& screw, length::Unit unit,
                                     const Style& style, std::size_t width);

} // namespace present
