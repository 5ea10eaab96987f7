// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What of a listed head can be measured or seen. Only identify_screw.cpp includes this.
#pragma once

#include <array>
#include <string>

#include "match/identify_screw.hpp"

namespace match {

enum class HeadFigure { head, height, key, thread, drive };
inline constexpr std::array k_head_figures{HeadFigure::head, HeadFigure::height, HeadFigure::key,
                                           HeadFigure::thread, HeadFigure::drive};
[[nodiscard]] std::string to_text(HeadFigure);

// What it may measure, limits included; absent for what is not a length, or not listed.
[[nodiscard]] length::MaybeRange figure_range(const trade::Head& head, HeadFigure figure);
[[nodiscard]] length::Range over_the_thread(const trade::Head& head);

// For people: `.540 to .562 in`, `5/16`, `3/8-16 or 24`, `slot`.
[[nodiscard]] std::string figure_text(const trade::Head& head, HeadFigure figure,
                                      length::Unit unit);

// Whether the thread is this head's. A shoulder screw answers to its shoulder and to its thread.
[[nodiscard]] bool has_thread(const trade::Head& head, const trade::Thread& thread);

// Whether this figure, well measured, is sure to tell the two apart.
[[nodiscard]] bool tells_apart(HeadFigure figure, const trade::Head& a, const trade::Head& b);

} // namespace match
