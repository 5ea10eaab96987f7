// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The scales of a drawing.
#pragma once

#include <string>

namespace drawing {

// Paper over part: `5:1` is 5. Of the usual scales the largest at which the part fits.
struct Scale {
    double factor = 1;
    std::string name;
};
// All in millimetres.
[[nodiscard]] Scale fitting_scale(double length, double most_length, double dia, double most_dia);

} // namespace drawing
