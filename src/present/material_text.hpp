// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Materials for a person, in the shop's unit.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "length/length.hpp"
#include "present/style.hpp"
#include "trade/material.hpp"

namespace present {

// A line a material, with a word for each thing to mind.
[[nodiscard]] std::string materials_table(const std::vector<trade::Material>& materials,
                                          length::Unit unit, std::size_t width, const Style& style);

// What everyday names are taken as.
[[nodiscard]] std::string everyday_table(const std::vector<trade::EverydayMaterial>& everyday,
                                         std::size_t width, const Style& style);

// Everything for CSV; the first row is the header, with the units. Empty: nothing is said; a dwell
// is `allowed` or what is said of it.
[[nodiscard]] std::vector<std::vector<std::string>>
material_cells(const std::vector<trade::Material>& materials, length::Unit unit);

// Everything known of one, with the feeds of its class and where each figure is from.
[[nodiscard]] std::string material_text(const trade::Material& material,
                                        const std::vector<trade::Feed>& feeds, length::Unit unit,
                                        std::size_t width);

} // namespace present
