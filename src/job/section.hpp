// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The section through the counterbored hole with the screw in it, to scale.
#pragma once

#include "drawing/drawing.hpp"
#include "match/answer.hpp"

namespace job {

inline constexpr double k_section_width = 97; // mm of paper

// At the middle of every range. A part of unknown thickness is drawn broken off. Absent where the
// cutter, the hole, the depth or the screw is not known.
[[nodiscard]] std::optional<drawing::Drawing> draw_section(const match::Question& question,
                                                           const match::Answer& answer,
                                                           const drawing::Lettering& lettering);

} // namespace job
