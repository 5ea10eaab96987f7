// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The section through the counterbored hole with the screw in it, to scale.
#pragma once

#include "drawing/drawing.hpp"
#include "job/sheet.hpp"

namespace job {

inline constexpr double k_section_width = 97; // mm of paper

// At the middle of every range, lettered with the sheet's own figures. A part of unknown thickness
// is drawn broken off. Absent where the sheet is not usable, or the cutter, the hole, the depth or
// the screw is not known.
[[nodiscard]] std::optional<drawing::Drawing> draw_section(const Sheet& sheet,
                                                           const drawing::Lettering& lettering);

} // namespace job
