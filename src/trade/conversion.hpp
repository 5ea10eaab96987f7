// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Inch units of force, torque and stress in SI units. All are exact or the quotient of exact
// numbers: the pound is 0.45359237 kg, standard gravity 9.80665 m/s2, the inch 25.4 mm.
// Source: NIST SP 811, appendix B.
#pragma once

namespace trade {

inline constexpr double k_mm_in_inch = 25.4;
inline constexpr double k_metres_in_foot = 0.3048;
inline constexpr double k_newtons_in_pound = 4.4482216152605; // 0.45359237 x 9.80665
inline constexpr double k_newton_metres_in_inch_pound = k_newtons_in_pound * 0.0254;
inline constexpr double k_newton_metres_in_foot_pound = k_newtons_in_pound * k_metres_in_foot;
inline constexpr double k_megapascals_in_ksi =
    k_newtons_in_pound * 1000 / (k_mm_in_inch * k_mm_in_inch);

} // namespace trade
