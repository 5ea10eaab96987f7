// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Lettering of a drawing: how wide text is, where it breaks, and how limits are written.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "drawing/drawing.hpp"
#include "length/range.hpp"

namespace drawing {

inline constexpr double k_dimension_size = 3.0;
inline constexpr double k_note_size = 2.7;
inline constexpr double k_label_size = 2.0;
// From one line of text to the next, as a multiple of its size.
inline constexpr double k_line_pitch = 1.4;

// Lines of text, one under the other.
using Stack = std::vector<std::string>;

[[nodiscard]] double width_of(std::string_view words, double size);
[[nodiscard]] double width_of(const Stack& stack, double size);
[[nodiscard]] double height_of(const Stack& stack, double size);

// Broken at spaces into lines no wider than `width`; a longer word is broken anywhere.
[[nodiscard]] Stack wrap(std::string_view words, double size, double width);

// `.3260-.3270`: both with the same number of decimals, four where they lie within .0045 in, else
// three; in millimetres three within 0.04 mm, else two. Rounded inward.
[[nodiscard]] std::string limits_text(const length::Range& limits, length::Unit unit);

// The limits between `before` and `after`, in the other unit on a second line if asked for.
[[nodiscard]] Stack limits_stack(const length::Range& limits, const Lettering& lettering,
                                 std::string_view before = {}, std::string_view after = {});

// A single size as a bar or a length is called: `3/8 in (.375)`, `10 mm`; a size of the other
// system keeps its name: `10 mm (.3937)`, `3/8 in (9.525 mm)`.
[[nodiscard]] std::string size_text(length::Length size, length::Unit unit);

} // namespace drawing
