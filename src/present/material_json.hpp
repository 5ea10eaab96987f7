// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A material for other programs.
#pragma once

#include <vector>

#include "present/json.hpp"
#include "trade/tables.hpp"

namespace present {

// Speeds in metres a minute, the pressure in megapascals, and of `feeds` those of its class, in
// millimetres a turn by the diameter of the cutter: over `above_mm`, up to `upto_mm`, null where
// there is no limit.
[[nodiscard]] Json material_json(const trade::Material& material,
                                 const std::vector<trade::Feed>& feeds);

} // namespace present
