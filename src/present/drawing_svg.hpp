// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A drawing as SVG 1.1: black on white, no scripts, no styles, nothing from outside.
#pragma once

#include <string>

#include "make/drawing.hpp"

namespace present {

// The `svg` element, to stand inside a page.
[[nodiscard]] std::string svg_element(const drawing::Drawing& drawing);

// A file of its own, at its size in millimetres.
[[nodiscard]] std::string svg_file(const drawing::Drawing& drawing);

} // namespace present
