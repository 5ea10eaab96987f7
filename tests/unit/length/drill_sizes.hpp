// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Nominal diameters of the number and letter drills in ten-thousandths of an inch, as ASME B94.11M
// and every shop chart print them.
#pragma once

#include <array>

namespace drill_sizes {

// #1 to #80.
constexpr std::array<int, 80> k_number{
    2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800, 1770,
    1730, 1695, 1660, 1610, 1590, 1570, 1540, 1520, 1495, 1470, 1440, 1405, 1360, 1285, 1200, 1160,
    1130, 1110, 1100, 1065, 1040, 1015, 995,  980,  960,  935,  890,  860,  820,  810,  785,  760,
    730,  700,  670,  635,  595,  550,  520,  465,  430,  420,  410,  400,  390,  380,  370,  360,
    350,  330,  320,  310,  292,  280,  260,  250,  240,  225,  210,  200,  180,  160,  145,  135};

// A to Z.
constexpr std::array<int, 26> k_letter{2340, 2380, 2420, 2460, 2500, 2570, 2610, 2660, 2720,
                                       2770, 2810, 2900, 2950, 3020, 3160, 3230, 3320, 3390,
                                       3480, 3580, 3680, 3770, 3860, 3970, 4040, 4130};

} // namespace drill_sizes
