// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Figures for other programs, unrounded.
#pragma once

#include "job/figure.hpp"
#include "present/json.hpp"

namespace present {

// {"name": .., "value_mm": [lo, hi], "formula": .., "inputs": [{"name": .., "value_..": ..}, ..],
// "source": ..}. The key of a value says its unit: _mm, _deg, _mm2, _m_per_min, _rpm, _n_m, _n,
// _mpa, _s; a pure number is [lo, hi] and a text a string, both under `value`.
[[nodiscard]] Json figure_json(const job::Figure& figure);

} // namespace present
