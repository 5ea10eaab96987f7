// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A material for other programs.
#pragma once

#include <vector>

#include "present/json.hpp"
#include "trade/material.hpp"

namespace present {

// Speeds in metres a minute, the pressure in megapascals from the lowest to the highest edition,
// and of `feeds` those of its class, in millimetres per revolution: for a cutter of `at_mm`, the
// middle of its band from over `above_mm` to `upto_mm`, null where there is no limit. One that is
// refused has null for all of them.
[[nodiscard]] Json material_json(const trade::Material& material,
                                 const std::vector<trade::Feed>& feeds);

[[nodiscard]] Json everyday_json(const std::vector<trade::EverydayMaterial>& everyday);

} // namespace present
