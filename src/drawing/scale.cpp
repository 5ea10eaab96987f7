// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "drawing/scale.hpp"

#include <array>
#include <utility>

namespace drawing {

Scale fitting_scale(double length, double most_length, double dia, double most_dia) {
    static constexpr std::array<std::pair<double, const char*>, 9> k_scales{{{20, "20:1"},
                                                                             {10, "10:1"},
                                                                             {5, "5:1"},
                                                                             {4, "4:1"},
                                                                             {2, "2:1"},
                                                                             {1, "1:1"},
                                                                             {0.5, "1:2"},
                                                                             {0.2, "1:5"},
                                                                             {0.1, "1:10"}}};
    for (const auto& [factor, name] : k_scales)
        if (length * factor <= most_length && dia * factor <= most_dia)
            return {factor, name};
    return {k_scales.back().first, k_scales.back().second};
}

} // namespace drawing
